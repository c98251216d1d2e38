using DesignSearch.Climate.Formats;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Stamps as people, loggers and agencies write them, each with the moment it means, and what is no stamp at all.</summary>
public sealed class StampTests
{
    private const int None = int.MinValue;
    private const string Epoch = "epoch";

    [Theory]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06", "2021-03-04", 306, None)]
    [InlineData("YYYY-MM-DD hh:mm", " 2021-3-4 5:06 ", "2021-03-04", 306, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 24:00", "2021-03-04", 1440, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06:59", "2021-03-04", 306, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06:59.123", "2021-03-04", 306, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 12:06 AM", "2021-03-04", 6, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 12:06 PM", "2021-03-04", 726, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 01:06 pm", "2021-03-04", 786, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 11:59 am", "2021-03-04", 719, None)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06Z", "2021-03-04", 306, 0)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06:30z", "2021-03-04", 306, 0)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+13:00", "2021-03-04", 306, 780)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06 -0330", "2021-03-04", 306, -210)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+01", "2021-03-04", 306, 60)]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06:00.5+14:59", "2021-03-04", 306, 899)]
    [InlineData("YYYYMMDD:hhmm", "20210304:0506", "2021-03-04", 306, None)]
    [InlineData("YYYYMMDDhh", "2021030405", "2021-03-04", 300, None)]
    [InlineData("DD.MM.YYYY", "29.2.2024", "2024-02-29", 0, None)]
    [InlineData("YYYY-MM", "2021-07", "2021-07-01", 0, None)]
    [InlineData("YYYY", "1", "0001-01-01", 0, None)]
    [InlineData("YYYY", "9998", "9998-01-01", 0, None)]
    [InlineData(Epoch, "0", "1970-01-01", 0, 0)]
    [InlineData(Epoch, "1614834360", "2021-03-04", 306, 0)]
    [InlineData(Epoch, "1614834360000", "2021-03-04", 306, 0)]
    [InlineData(Epoch, "-60", "1969-12-31", 1439, 0)]
    [InlineData(Epoch, "-2208988800000", "1900-01-01", 0, 0)]
    public void A_stamp_means_its_moment(string pattern, string text, string day, int minutes, int offset)
    {
        Assert.True(StampPattern.TryRead(pattern == Epoch ? StampPattern.Epoch : pattern, text, out var foundDay, out var foundMinutes, out var foundOffset), text);
        Assert.Equal((DateTime.Parse(day, System.Globalization.CultureInfo.InvariantCulture), minutes, offset), (foundDay, foundMinutes, foundOffset ?? None));
    }

    [Theory]
    [InlineData("YYYY-MM-DD hh:mm", "2021-13-04 05:06")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-00-04 05:06")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-02-29 05:06")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-02-00 05:06")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 25:00")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 24:01")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:60")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 00:06 AM")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 13:06 PM")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04")]
    [InlineData("YYYY-MM-DD hh:mm", "2021/03/04 05:06")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06 or so")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06:5x")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06:5.x")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06.5.5")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+15:00")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+01:60")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+1")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+01.30")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+0x")]
    [InlineData("YYYY-MM-DD hh:mm", "2021-03-04 05:06+01:x0")]
    [InlineData("YYYYMMDD", "202134")]
    [InlineData("YYYYMMDD", "2021x304")]
    [InlineData("YYYY", "0")]
    [InlineData("YYYY", "9999")]
    [InlineData("YYYY-MM", "-07")]
    [InlineData(Epoch, "soon")]
    [InlineData(Epoch, "7300000000")]
    [InlineData(Epoch, "900000000000000")]
    public void What_is_no_moment_is_no_stamp(string pattern, string text) => Assert.False(StampPattern.TryRead(pattern == Epoch ? StampPattern.Epoch : pattern, text, out _, out _, out _), text);

    [Theory]
    [InlineData("161483436", true)]
    [InlineData("-1614834360123", true)]
    [InlineData("16148343", false)]
    [InlineData("16148343601234", false)]
    [InlineData("16148343x", false)]
    public void Nine_digits_and_more_are_seconds(string text, bool epoch) => Assert.Equal(epoch, StampPattern.LooksLikeEpoch(text));

    // Hourly through both changes of the clocks: what lies between is summer time.
    [Fact]
    public void An_hour_forward_and_back_was_summer_time()
    {
        var standard = Enumerable.Range(0, 400).Select(h => new DateTime(2021, 3, 27).AddHours(h)).ToList();
        var clock = standard.Select((s, i) => i is >= 26 and < 300 ? s.AddHours(1) : s).ToList();
        var said = CivilClock.ToStandard(clock);
        Assert.Equal(standard, clock);
        Assert.Equal("The clock of the file keeps daylight saving: 274 rows were set back one hour to standard time.", said);
    }

    [Fact]
    public void A_file_that_begins_in_summer_time_is_set_back_from_its_start()
    {
        var standard = Enumerable.Range(0, 100).Select(h => new DateTime(2021, 10, 29).AddHours(h)).ToList();
        var clock = standard.Select((s, i) => i < 49 ? s.AddHours(1) : s).ToList();
        Assert.Contains("49 rows", CivilClock.ToStandard(clock), StringComparison.Ordinal);
        Assert.Equal(standard, clock);
    }

    // A Sunday of spring, from one to three at night: summer time to the end. Any other step of an hour is a gap.
    [Theory]
    [InlineData("2021-03-28 03:00", true)]
    [InlineData("2021-04-04 01:00", true)]
    [InlineData("2021-09-26 02:00", true)]
    [InlineData("2021-10-03 03:00", true)]
    [InlineData("2021-03-29 03:00", false)]
    [InlineData("2021-03-28 04:00", false)]
    [InlineData("2021-03-28 00:00", false)]
    [InlineData("2021-05-02 03:00", false)]
    [InlineData("2021-08-29 03:00", false)]
    public void A_step_that_is_never_taken_back_is_summer_time_in_spring_only(string first, bool summer)
    {
        var step = DateTime.Parse(first, System.Globalization.CultureInfo.InvariantCulture);
        var clock = Enumerable.Range(-30, 60).Select(h => step.AddHours(h < 0 ? h - 1 : h)).ToList();
        var said = CivilClock.ToStandard(clock);
        Assert.Equal(summer ? "The clock of the file keeps daylight saving: 30 rows were set back one hour to standard time." : null, said);
        Assert.Equal(summer ? step.AddHours(-1) : step, clock[30]);
    }

    [Fact]
    public void Half_hours_and_quarters_keep_their_steps()
    {
        foreach (var minutes in new[] { 15, 30 })
        {
            var standard = Enumerable.Range(0, 400).Select(i => new DateTime(2021, 3, 27).AddMinutes(i * minutes)).ToList();
            var clock = standard.Select((s, i) => i is >= 104 and < 300 ? s.AddHours(1) : s).ToList();
            Assert.Contains("196 rows", CivilClock.ToStandard(clock), StringComparison.Ordinal);
            Assert.Equal(standard, clock);
            Assert.Null(CivilClock.ToStandard(clock));
        }
    }
}
