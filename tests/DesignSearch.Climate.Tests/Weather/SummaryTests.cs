using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What is said of a record in a few figures, by hand; and its cold and dark runs of days.</summary>
public sealed class SummaryTests
{
    // Twelve whole days and three hours: day d is at d, but for four days of frost from the sixth on; at noon 24 W/m² more than by night.
    private static readonly double[] Days = [0, 1, 2, 3, 4, -8, -2, -3, -1, 9, 10, 11];

    private static double Air(int hour) => hour / 24 < Days.Length ? Days[hour / 24] : -50;

    [Fact]
    public void Months_frost_and_coldest_runs_are_those_of_the_days()
    {
        var count = (24 * 12) + 3;
        var grid = Grids.Hourly((WeatherField.Air, Grids.Of(count, Air)), (WeatherField.Global, Grids.Of(count, h => h % 24 < 12 ? 0 : 240)), (WeatherField.Wind, Grids.Of(count, h => h % 2)));
        double[] recorded = Grids.Of(count, h => h % 24 == 7 ? double.NaN : Air(h));
        var summary = SummaryMaker.Make(grid, recorded, 0, new(Grids.Start, [], []));
        var month = Assert.Single(summary.Months);
        Assert.Equal((1, -50), (month.Month, month.LowestC));
        Assert.Equal(((24.0 * Days.Sum()) - 150) / count, month.MeanC, 1e-9);
        // Of 4 days 23 hours each as recorded, and the three at the end; less than a year counts as one.
        Assert.Equal((4 * 23) + 3, month.FrostHours);
        Assert.Equal(month.FrostHours, summary.FrostHours);
        Assert.Equal(24.0 / 1000 * 240 * 144 / count, month.GhiKwhPerM2Day, 1e-9);
        Assert.Equal(145 / 291.0, month.MeanWindMPerS, 1e-9);
        // Three hours are no day.
        Assert.Equal(-8, summary.ColdestDayC, 1e-9);
        Assert.Equal(-13 / 3.0, summary.ColdestThreeDaysC, 1e-9);
        Assert.Equal((2 + 3 + 4 - 8 - 2 - 3 - 1) / 7.0, summary.ColdestWeekC, 1e-9);
    }

    [Fact]
    public void What_the_file_lacks_is_that_of_the_hours_and_an_interval_belongs_to_its_middle()
    {
        // From the last day of January on, stamped at the end of each hour: the first hour of February is January's.
        var count = 48;
        var grid = SampleGridFrom(new DateTime(2021, 1, 31, 1, 0, 0), count, h => h < 24 ? -1 : 3);
        var summary = SummaryMaker.Make(grid, grid.Values[WeatherField.Air], -30, new(new DateTime(2021, 1, 31), Grids.Of(count, h => h < 24 ? 100 : 200), Grids.Of(count, h => h < 24 ? 2 : 5)));
        Assert.Equal([(1, -1.0, 2.4, 24.0, 2.0), (2, 3, 4.8, 0, 5)], summary.Months.Select(m => (m.Month, m.MeanC, Math.Round(m.GhiKwhPerM2Day, 9), m.FrostHours, m.MeanWindMPerS)));
        Assert.Equal((-1, double.PositiveInfinity), (summary.ColdestDayC, summary.ColdestThreeDaysC));
        var unknown = SummaryMaker.Make(grid, Grids.Of(count, _ => double.NaN), -30, new(new DateTime(2021, 6, 1), Grids.Of(count, _ => 1), Grids.Of(count, _ => 1)));
        Assert.All(unknown.Months, m => Assert.True(double.IsNaN(m.LowestC) && m.FrostHours == 0 && double.IsNaN(m.GhiKwhPerM2Day) && double.IsNaN(m.MeanWindMPerS)));
    }

    // Of thirty days the coldest tenth and one are at -5 and below: three in a row are a spell, two are none.
    [Fact]
    public void Three_cold_days_running_are_a_spell()
    {
        double[] means = [.. Enumerable.Range(0, 30).Select(d => d is 4 or 5 or 6 ? -10.0 + d : d is 20 or 21 ? -4 : d)];
        var days = means.Select((m, d) => new WinterDay(new DateOnly(2021, 1, 1).AddDays(d), m - 3, m, d)).ToList();
        var spell = Assert.Single(SpellFinder.Cold(days));
        Assert.Equal((new DateOnly(2021, 1, 5), 3, -5.0, -9.0, 5.0), (spell.First, spell.Days, spell.MeanC, spell.LowestC, spell.SunKwhPerM2Day));
        Assert.Empty(SpellFinder.Cold([.. days.Take(6)]));
        Assert.Empty(SpellFinder.Cold([]));
    }

    // Above the air at 45° north early in January come some 2.6 kWh/m²: below three tenths of that a day is dark, and only the colder half counts.
    [Fact]
    public void Dark_days_running_are_told_the_longest_first()
    {
        double Sun(int d) => d is >= 2 and <= 4 ? 0.5 : d is >= 8 and <= 12 ? 0.6 : d is >= 20 and <= 26 ? 0.1 : 2;
        var days = Enumerable.Range(0, 30).Select(d => new WinterDay(new DateOnly(2021, 1, 1).AddDays(d), d < 16 ? -6 : 4, d < 16 ? -3 : 7, Sun(d))).ToList();
        var dark = SpellFinder.Dark(days, Places.At(45, 10));
        Assert.Equal([(new DateOnly(2021, 1, 9), 5), (new DateOnly(2021, 1, 3), 3)], dark.Select(s => (s.First, s.Days)));
        Assert.Equal((-3, -6, 0.6), (dark[0].MeanC, dark[0].LowestC, Math.Round(dark[0].SunKwhPerM2Day, 9)));
    }

    // Whole days only, from the first midnight on.
    [Fact]
    public void A_day_is_whole_or_none()
    {
        var days = WinterDay.Of(RecordFrom(new DateTime(2021, 1, 1, 22, 0, 0), 2 + 24 + 24 + 5));
        Assert.Equal([new DateOnly(2021, 1, 2), new DateOnly(2021, 1, 3)], days.Select(d => d.Date));
        Assert.Equal((2.0, 13.5, 0.24), (days[0].LowC, days[0].MeanC, Math.Round(days[0].SunKwhPerM2, 9)));
    }

    // By the clock of a season: over the new year, within one, and to the last of a short February.
    [Theory]
    [InlineData(11, 1, 3, 31, 2020, "2020-11-01", "2021-04-01")]
    [InlineData(5, 1, 9, 30, 2021, "2021-05-01", "2021-10-01")]
    [InlineData(11, 15, 2, 29, 2020, "2020-11-15", "2021-03-01")]
    [InlineData(11, 15, 2, 29, 2019, "2019-11-15", "2020-03-01")]
    [InlineData(3, 1, 3, 1, 2021, "2021-03-01", "2021-03-02")]
    public void A_season_has_its_days(int fromMonth, int fromDay, int toMonth, int toDay, int year, string first, string after)
    {
        var (start, end) = SeasonCalendar.InYear(new(fromMonth, fromDay, toMonth, toDay), year);
        Assert.Equal((first, after), ($"{start:yyyy-MM-dd}", $"{end:yyyy-MM-dd}"));
    }

    // A twentieth of the way up from the lowest moment to the mean.
    [Fact]
    public void The_lowest_hour_lies_a_little_above_the_lowest_moment()
    {
        var month = new MonthMeans(10, 0, 3, 2, 70);
        Assert.Equal(0.5, month.LowestHourC, 1e-12);
        var back = MonthMeans.OfHourMeans(10, 0.5, 3, 2, 70);
        Assert.Equal((10, 0, 3, 2, 70), (back.MeanC, Math.Round(back.MeanDailyLowC, 12), back.GhiKwhPerM2Day, back.WindMPerS, back.HumidityPercent));
    }

    // Half-way between the middles of two days half of each; before the first and behind the last that one alone. Cover 1.345 - 1.752 of the clearness.
    [Theory]
    [InlineData(12, 0.2)]
    [InlineData(24, 0.4)]
    [InlineData(36, 0.6)]
    [InlineData(54, 0.45)]
    [InlineData(0, 0.2)]
    [InlineData(90, 0.4)]
    public void Clearness_runs_from_noon_to_noon(double hour, double expected)
    {
        Assert.Equal(expected, SkyTemperature.ClearnessAt([0.2, 0.6, 0.4], hour), 1e-12);
        Assert.Equal(Math.Clamp(1.345 - (1.752 * expected), 0, 1), SkyTemperature.CoverAt([0.2, 0.6, 0.4], hour), 1e-12);
        Assert.Equal(0.3, SkyTemperature.ClearnessAt([0.3], hour));
    }

    private static SampleGrid SampleGridFrom(DateTime start, int count, Func<int, double> air) => SampleGrid.Lay(new()
    {
        Stamps = [.. Enumerable.Range(0, count).Select(h => start.AddHours(h))],
        Lines = [.. Enumerable.Range(Grids.FirstLine, count)],
        Values = new() { [WeatherField.Air] = Grids.Of(count, air) },
        Years = [start.Year],
        IsTypical = false,
    }, 0, false);

    private static WeatherRecord RecordFrom(DateTime start, int hours) => new()
    {
        Place = Places.At(45, 10),
        Source = "made",
        Period = "made",
        IsTypicalYear = false,
        Start = start,
        AirC = Grids.Of(hours, h => h),
        DewPointC = Grids.Of(hours, _ => 0),
        WindMPerS = Grids.Of(hours, _ => 0),
        GlobalWPerM2 = Grids.Of(hours, _ => 10),
        DiffuseWPerM2 = Grids.Of(hours, _ => 0),
        BeamNormalWPerM2 = Grids.Of(hours, _ => 0),
        Origins = new Dictionary<WeatherField, FieldOrigin[]>(),
        SunFit = new(0, 0, 0),
        Repairs = [],
        Summary = new([], 0, 0, 0, 0),
    };
}
