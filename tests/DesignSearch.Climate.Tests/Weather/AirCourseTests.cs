using System.Globalization;
using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Air that is a pure wave by day and by year, against the sun and the place: what is believed, doubted and refused, at the ends.</summary>
public sealed class AirCourseTests
{
    // By the rule 27 - 0.0075 x 45² - 0.25 x 45 cos(2 pi (month - 1.2)/12), in January, at the sea.
    private const double January = 0.624;
    private const int Month = 31;

    // Usually warmest at 14.7; in the middle of its zone the clock is the sun's.
    [Theory]
    [InlineData(17.6, 4, "")]
    [InlineData(17.8, 4, "the air is warmest 3 h too late in the day; stamps of UTC+4 would fit")]
    [InlineData(11.8, 4, "")]
    [InlineData(11.6, 4, "the air is warmest 3 h too early in the day; stamps of UTC-2 would fit")]
    [InlineData(19.6, 4, "the air is warmest 5 h too late in the day; stamps of UTC+6 would fit")]
    [InlineData(2.8, 1.4, "the air is warmest 12 h too early in the day; stamps of UTC-11 would fit")]
    [InlineData(2.8, 0.45, "")]
    public void A_clock_that_is_off_is_doubted(double peak, double amplitude, string words)
    {
        var (faults, doubts) = Run(Month, (_, hour) => January + (amplitude * Wave(hour - peak, 24)));
        Assert.Empty(faults);
        var told = doubts.Where(d => d.StartsWith("By the clock", StringComparison.Ordinal));
        Assert.Equal(words.Length > 0 ? [$"By the clock of the file {words}. Look at the zone of the stamps, and whether the sensor is in the sun or indoors."] : [], told);
    }

    [Theory]
    [InlineData(19.8, 1.6, "UTC+6")]
    [InlineData(9.6, 4, "UTC-4")]
    [InlineData(3.6, 4, "UTC-10")]
    public void A_clock_that_is_far_off_is_refused_where_the_days_are_plain(double peak, double amplitude, string fits)
    {
        var (faults, doubts) = Run(Month, (_, hour) => January + (amplitude * Wave(hour - peak, 24)));
        Assert.Equal("UTC+1", Assert.Single(faults).Value);
        Assert.StartsWith("a clock the air agrees with: the air is warmest ", faults[0].Expected, StringComparison.Ordinal);
        Assert.Contains($"; stamps of {fits} would fit (", faults[0].Expected, StringComparison.Ordinal);
        Assert.DoesNotContain(doubts, d => d.StartsWith("By the clock", StringComparison.Ordinal));
    }

    // Ten days less an hour are not asked.
    [Theory]
    [InlineData(239, 0)]
    [InlineData(240, 1)]
    public void Ten_days_are_enough_to_tell(int hours, int doubts) => Assert.Equal(doubts, Told(Grids.Of(hours, i => January + (4 * Wave(i - 18, 24)))).Doubts.Count);

    [Theory]
    [InlineData(16.9, 0, "")]
    [InlineData(17.1, 0, "month 1 is 17 K warmer than its latitude and height have it")]
    [InlineData(-16.9, 0, "")]
    [InlineData(-17.1, 0, "month 1 is 17 K colder than its latitude and height have it")]
    [InlineData(23.9, 0, "month 1 is 24 K warmer than its latitude and height have it")]
    [InlineData(-19.0, 2000, "")]
    [InlineData(7, 2000, "month 1 is 18 K warmer than its latitude and height have it")]
    public void A_month_that_the_place_cannot_have_is_doubted(double off, double elevationM, string words)
    {
        var (faults, doubts) = Run(Month, (_, hour) => January + off + (4 * Wave(hour - 14.7, 24)), elevationM: elevationM);
        Assert.Empty(faults);
        Assert.Equal(words.Length > 0 ? [$"The air of {words}: look at the unit, the latitude and the height."] : [], doubts);
    }

    [Theory]
    [InlineData(24.1, "warmer")]
    [InlineData(-24.1, "colder")]
    public void A_month_that_no_place_can_have_is_refused(double off, string word)
    {
        var fault = Assert.Single(Run(Month, (_, hour) => January + off + (4 * Wave(hour - 14.7, 24))).Faults);
        Assert.Equal(("45", $"air of the place in °C: month 1 is 24 K {word} than its latitude and height have it (another unit, or a latitude or height of another place?)"), (fault.Value, fault.Expected));
    }

    // A wave's hours nearest to its ends lie 0.3 h off them: they have 0.997 of its height.
    [Theory]
    [InlineData(0.49, "From day to night the air moves by 1.0 K only: daily means, or a sensor indoors or in the ground?")]
    [InlineData(0.51, "")]
    [InlineData(10.4, "")]
    [InlineData(10.7, "From night to day the air moves by 21 K on average: a sensor in the sun, or inside the greenhouse?")]
    public void Days_that_hardly_move_or_move_too_far_are_doubted(double amplitude, string words) =>
        Assert.Equal(words.Length > 0 ? [words] : [], Run(Month, (_, hour) => January + (amplitude * Wave(hour - 14.7, 24))).Doubts);

    [Theory]
    [InlineData(45, 0.56, 4, 14.7, 365, "")]
    [InlineData(45, 0.06, 4, 14.7, 365, "a latitude whose summer is that of the air: -45 would (south is negative)")]
    [InlineData(-45, 0.56, 4, 14.7, 365, "a latitude whose summer is that of the air: 45 would (south is negative)")]
    [InlineData(-45, 0.06, 4, 14.7, 365, "")]
    [InlineData(45, 0.06, 4, 2.7, 365, "air that is warm by day and in summer; it is the other way round (its sign is swapped)")]
    [InlineData(45, 0.06, 2.9, 14.7, 365, "")]
    [InlineData(45, 0.06, 3.2, 14.7, 365, "a latitude whose summer is that of the air: -45 would (south is negative)")]
    [InlineData(19, 0.06, 4, 14.7, 365, "")]
    [InlineData(21, 0.06, 4, 14.7, 365, "a latitude whose summer is that of the air: -21 would (south is negative)")]
    [InlineData(45, 0.25, 4, 14.7, 365, "")]
    [InlineData(45, 0.06, 4, 14.7, 299, "")]
    public void A_year_that_is_warm_in_the_other_half_is_refused(double latitude, double warmest, double swing, double peak, int days, string words)
    {
        var faults = Run(days, (day, hour) => 14 + (swing * Wave(day / 365.0 - warmest, 1)) + (4 * Wave(hour - peak, 24)), latitude).Faults;
        Assert.Equal(words.Length > 0 ? [words] : [], faults.Select(f => f.Expected));
    }

    [Theory]
    [InlineData(45, 1.9, 365, true)]
    [InlineData(45, 2.1, 365, false)]
    [InlineData(29, 1.9, 365, false)]
    [InlineData(-31, 1.9, 365, true)]
    [InlineData(45, 1.9, 290, false)]
    public void A_year_without_seasons_is_doubted_far_from_the_equator(double latitude, double swing, int days, bool doubted)
    {
        var doubts = Run(days, (day, hour) => 12 + (swing * Wave(day / 365.0 - (latitude < 0 ? 0.06 : 0.56), 1)) + (4 * Wave(hour - 14.7, 24)), latitude).Doubts;
        Assert.Equal(doubted ? 1 : 0, doubts.Count(d => d == "From winter to summer the air moves by 3.8 K only: a sensor indoors?"));
    }

    // The day runs by the sun of the place: 7.5 degrees west of the middle of its zone the air is warmest half an hour later by the clock.
    [Theory]
    [InlineData(18.1, 0)]
    [InlineData(18.3, 1)]
    public void Noon_is_that_of_the_place(double peak, int doubts) =>
        Assert.Equal(doubts, Run(Month, (_, hour) => January + (4 * Wave(hour - peak, 24)), longitude: 7.5).Doubts.Count);

    private static double Wave(double at, double of) => Math.Cos(2 * Math.PI * at / of);

    private static (IReadOnlyList<InputFault> Faults, List<string> Doubts) Run(int days, Func<int, int, double> air, double latitude = 45, double longitude = 15, double elevationM = 0) =>
        Told(Grids.Of(24 * days, i => air(i / 24, i % 24)), latitude, longitude, elevationM);

    private static (IReadOnlyList<InputFault> Faults, List<string> Doubts) Told(double[] air, double latitude = 45, double longitude = 15, double elevationM = 0)
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, string.Create(CultureInfo.InvariantCulture, $"# latitude: {latitude}\n# longitude: {longitude}\n# elevation_m: {elevationM}\n# zone_hours: 1\nDate Time,Temp (C)\n2021-01-01 00:00,1\n"));
            var (faults, doubts) = (new FaultList(), new List<string>());
            var map = KnownFormats.All(null).Single(m => m.Title.StartsWith("Temperature logger", StringComparison.Ordinal));
            var head = new HeadReading(path, map, SourceText.Read(path), new(), faults);
            Assert.Empty(faults.Faults);
            new AirCourse(path, Grids.Hourly((WeatherField.Air, air)), head, faults, doubts).Run();
            Assert.All(faults.Faults, f => Assert.Equal((path, 0, 0), (f.File, f.Line, f.Column)));
            return (faults.Faults, doubts);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
