using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Gaps by hand: which are filled, with what, and which are refused.</summary>
public sealed class GapTests
{
    private const double Gap = double.NaN;

    [Fact]
    public void A_short_gap_is_bridged_straight()
    {
        double[] air = [1, Gap, Gap, Gap, 9, Gap, 3, Gap];
        var filler = new GapFiller(Grids.Hourly((WeatherField.Air, air)));
        Assert.Equal([(1, 3), (5, 1), (7, 1)], filler.Gaps(air));
        foreach (var gap in filler.Gaps(air))
            filler.Fill(air, gap, 3);
        // Behind the end there is nothing: what stood before it goes on.
        Assert.Equal([1, 3, 5, 7, 9, 6, 3, 3], air);
    }

    // Every day alike but for the eighth, 4 K warmer, of which ten hours are lost: the course of the days around it, lifted to meet both ends.
    [Fact]
    public void A_longer_gap_has_the_course_of_the_days_around_it_and_meets_both_ends()
    {
        double Course(int i) => 8 + (5 * Math.Sin(i * Math.PI / 12)) + (i / 24 == 7 ? 4 : 0);
        var air = Grids.Of(24 * 15, i => i is >= 175 and < 185 ? Gap : Course(i));
        var filler = new GapFiller(Grids.Hourly((WeatherField.Air, air)));
        filler.Fill(air, Assert.Single(filler.Gaps(air)), 3);
        for (var i = 170; i < 190; i++)
            Assert.Equal(Course(i), air[i], 1e-9);
    }

    // A record of a day and an hour: no other day has the hours that are lost.
    [Fact]
    public void A_longer_gap_that_no_day_around_can_tell_is_bridged_straight()
    {
        var air = Grids.Of(26, i => i is > 10 and < 21 ? Gap : i);
        var filler = new GapFiller(Grids.Hourly((WeatherField.Air, air)));
        filler.Fill(air, Assert.Single(filler.Gaps(air)), 3);
        for (var i = 0; i < air.Length; i++)
            Assert.Equal(i, air[i], 1e-9);
    }

    [Fact]
    public void The_usual_value_is_the_mean_of_the_nearest_day_before_and_after_within_four()
    {
        var air = Grids.Of(24 * 20, i => i % 24 == 6 ? Gap : 0);
        var filler = new GapFiller(Grids.Hourly((WeatherField.Air, air)));
        int Slot(int day) => (24 * day) + 6;
        Assert.True(double.IsNaN(filler.Usual(air, Slot(10))));
        (air[Slot(6)], air[Slot(15)]) = (2, 50);
        Assert.Equal(2, filler.Usual(air, Slot(10)));
        (air[Slot(12)], air[Slot(13)]) = (5, 70);
        Assert.Equal(3.5, filler.Usual(air, Slot(10)));
        air[Slot(7)] = 4;
        Assert.Equal(4.5, filler.Usual(air, Slot(10)));
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(6, false)]
    public void Cover_is_bridged_between_looks_six_hours_apart(int missing, bool bridged)
    {
        double[] cloud = [Gap, 20, .. Enumerable.Repeat(Gap, missing), 80, Gap];
        var found = CloudGaps.Bridge(Grids.Hourly((WeatherField.Cloud, cloud)), cloud);
        Assert.True(double.IsNaN(found[0]) && double.IsNaN(found[^1]));
        Assert.Equal(bridged ? [20, 30, 40, 50, 60, 70, 80] : [20], found[1..^1].Where(v => !double.IsNaN(v)).Take(bridged ? 7 : 1));
        Assert.Equal(bridged ? 2 : 2 + missing, found.Count(double.IsNaN));
    }

    // Sun above 150 W/m² between light, 280 at the ends of a day; zeros beside a gap with 30 above belong to it.
    [Theory]
    [InlineData(151, true)]
    [InlineData(150, false)]
    public void No_light_between_light_is_a_gap(double above, bool found) => Assert.Equal(found ? 1 : 0, DarkGaps.Mark([100, 0, 90], [400, above, 400]));

    [Theory]
    [InlineData(281, 3)]
    [InlineData(280, 0)]
    public void No_light_at_the_end_of_a_day_is_a_gap_where_the_sun_is_well_up(double above, int found)
    {
        double[] light = [0, 0, 0, 0, 100];
        Assert.Equal(found, DarkGaps.Mark(light, [30, 31, above, 40, 500]));
        Assert.Equal(found > 0 ? [false, true, true, true, false] : [false, false, false, false, false], light.Select(double.IsNaN));
        double[] back = [100, 0, 0, 0, 0];
        Assert.Equal(found, DarkGaps.Mark(back, [500, 40, above, 31, 30]));
        // The dark hours before the first light are night.
        Assert.Equal(0, DarkGaps.Mark([0, 0, 5], [0, 25, 300]));
    }

    [Theory]
    [InlineData(72, 0)]
    [InlineData(73, 1)]
    public void Three_days_are_filled_and_an_hour_more_is_refused_at_its_line(int hours, int refused)
    {
        var (air, faults, repairs) = Filled(Grids.Of(24 * 150, i => i >= 700 && i < 700 + hours ? Gap : i % 24));
        Assert.Equal(refused, faults.Count(f => f.Line == 710 && f.Expected == "no gap longer than 48 h in the air"));
        Assert.Equal(refused == 0, air.All(double.IsFinite));
        Assert.Equal(refused == 0 ? "2021-01-30 04:00 to 2021-02-02 03:00" : "2021-01-30 04:00 to 2021-02-02 04:00", faults.Count > 0 ? faults[0].Value : Span(repairs[0]));
    }

    // A tenth of January's 744 hours is 74.4.
    [Theory]
    [InlineData(74, 0)]
    [InlineData(75, 1)]
    public void A_month_of_which_more_than_a_tenth_is_missing_is_refused(int hours, int refused)
    {
        var lost = 0;
        var (_, faults, repairs) = Filled(Grids.Of(24 * 59, i => i is > 100 and < 744 && i % 8 == 3 && lost++ < hours ? Gap : i % 24));
        Assert.Equal(refused, faults.Count);
        Assert.All(faults, f => Assert.Equal("at most 10 % of the air of a month missing; 10 % are missing in month 1", f.Expected.Replace("\u00A0", " ", StringComparison.Ordinal)));
        Assert.StartsWith(FormattableString.Invariant($"{hours} h of missing air were filled from the hours around them ({hours} gaps, the longest "), Assert.Single(repairs), StringComparison.Ordinal);
    }

    // Twenty days are too few to speak of a month.
    [Theory]
    [InlineData(20, 0)]
    [InlineData(21, 1)]
    public void A_stretch_of_a_month_is_not_judged_as_a_month(int days, int refused) =>
        Assert.Equal(refused, Filled(Grids.Of(24 * days, i => i > 0 && i % 5 == 3 ? Gap : i % 24)).Faults.Count);

    // Two years and more are an archive: a long gap takes the usual value of its month and hour and is told, and its winter is left out; a short one is bridged.
    [Fact]
    public void A_long_gap_of_an_archive_takes_the_usual_value_of_its_month_and_hour()
    {
        double Usual(DateTime t) => (10 * t.Month) + t.Hour;
        var air = Grids.Of(24 * 731, i => i is >= 1000 and < 1049 or >= 9000 and < 9010 ? Gap : Usual(Grids.Start.AddHours(i)));
        var (grid, faults, repairs) = (Grids.Hourly((WeatherField.Air, air)), new FaultList(), new List<string>());
        var report = new GapReport(grid, "w.csv", faults, repairs);
        report.FillWeather(WeatherField.Air, "air");
        Assert.Empty(faults.Faults);
        Assert.Equal([(1000, 49)], report.Unknown);
        for (var i = 990; i < 1060; i++)
            Assert.Equal(Usual(Grids.Start.AddHours(i)), grid.Values[WeatherField.Air][i], 1e-9);
        for (var i = 8990; i < 9020; i++)
            Assert.Equal(Usual(Grids.Start.AddHours(i)), grid.Values[WeatherField.Air][i], 1e-9);
        Assert.Equal(
        [
            "10 h of missing air were filled from the hours around them (gaps: 1, the longest 2022-01-11 00:00 to 2022-01-11 09:00).",
            "Winters that touch what is missing of the air are left out (gaps over 48 h: 1, the longest 2021-02-11 16:00 to 2021-02-13 16:00; months that lack more than a tenth: 0).",
        ], repairs);
    }

    // January's 744 hours may lack 74: the stretch that lacks 75 is left out as a whole month.
    [Theory]
    [InlineData(74, 0)]
    [InlineData(75, 1)]
    public void A_thin_month_of_an_archive_is_left_out(int hours, int thin)
    {
        var lost = 0;
        var air = Grids.Of(24 * 731, i => i is > 100 and < 744 && i % 8 == 3 && lost++ < hours ? Gap : i % 24);
        var repairs = new List<string>();
        var report = new GapReport(Grids.Hourly((WeatherField.Air, air)), "w.csv", new(), repairs);
        report.FillWeather(WeatherField.Air, "air");
        Assert.Equal(thin == 1 ? [(0, 744)] : [], report.Unknown);
        Assert.Equal(thin, repairs.Count(r => r.EndsWith("(gaps over 48 h: 0; months that lack more than a tenth: 1).", StringComparison.Ordinal)));
    }

    // One stamp of another century among forty: it would be a record of a hundred years of which nothing is known, and be made for seconds.
    [Theory]
    [InlineData("2121", 20, "a year within 30 of that of the next row in time, 2021")]
    [InlineData("2052", 39, "a year within 30 of that of the next row in time, 2021")]
    [InlineData("1990", 0, "a year within 30 of that of the next row in time, 2021")]
    [InlineData("2051", 20, "")]
    [InlineData("2142", 20, "a year within 120 of the others, which lie about 2021")]
    public void A_row_of_another_generation_is_refused_at_its_line(string year, int row, string expected)
    {
        var text = "# latitude: 45\n# longitude: 15\n# elevation_m: 0\n# zone_hours: 1\nDate Time,Temp (C)\n"
            + string.Concat(Enumerable.Range(0, 40).Select(i => FormattableString.Invariant($"{(i == row ? year : "2021")}-01-{1 + (i / 24):00} {i % 24:00}:00,{1 + (i % 7)}\n")));
        IReadOnlyList<InputFault> found = [];
        try
        {
            TempFile.Read(text);
        }
        catch (InputException e)
        {
            found = e.Faults;
        }

        Assert.Equal(expected.Length > 0 ? [(row + 6, year, expected)] : [], found.Where(f => f.Value == year).Select(f => (f.Line, f.Value, f.Expected)));
    }

    [Fact]
    public void Of_two_rows_of_other_generations_the_first_in_time_is_told()
    {
        var text = "# latitude: 45\n# longitude: 15\n# elevation_m: 0\n# zone_hours: 1\nDate Time,Temp (C)\n"
            + string.Concat(Enumerable.Range(0, 40).Select(i => FormattableString.Invariant($"{(i == 0 ? 1950 : i == 1 ? 1985 : 2021)}-01-{1 + (i / 24):00} {i % 24:00}:00,{1 + (i % 7)}\n")));
        Assert.Equal([(6, "1950", "a year within 30 of that of the next row in time, 1985")], TempFile.Faults(text).Select(f => (f.Line, f.Value, f.Expected)));
    }

    private static string Span(string repair) => repair[(repair.IndexOf('(', StringComparison.Ordinal) + 1)..repair.IndexOf(')', StringComparison.Ordinal)];

    private static (double[] Air, IReadOnlyList<InputFault> Faults, List<string> Repairs) Filled(double[] air)
    {
        var (grid, faults, repairs) = (Grids.Hourly((WeatherField.Air, air)), new FaultList(), new List<string>());
        new GapReport(grid, "w.csv", faults, repairs).FillWeather(WeatherField.Air, "air");
        Assert.All(faults.Faults, f => Assert.True(f.File == "w.csv" && f.Column == 0 && f.Line == (f.Value.Length > 0 ? 710 : 0), f.ToString()));
        return (grid.Values[WeatherField.Air], faults.Faults, repairs);
    }
}
