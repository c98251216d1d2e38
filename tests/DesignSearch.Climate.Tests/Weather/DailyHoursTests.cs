using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Hours made of the highs and lows of days, and the days that a winter has: counted by hand.</summary>
public sealed class DailyHoursTests
{
    private static readonly Place Here = new("Somewhere", 45, 7.5, 100, 1);

    [Fact]
    public void Every_day_reaches_its_high_and_its_low_and_nothing_is_said_that_is_not_so()
    {
        var (table, faults, repairs) = Of(30, _ => { });
        Assert.Empty(faults);
        Assert.StartsWith("The file has the highs and lows of days only", Assert.Single(repairs), StringComparison.Ordinal);
        var air = table.Values[WeatherField.Air];
        Assert.Equal(30 * 24, air.Length);
        for (var d = 1; d < 29; d++)
        {
            Assert.Equal(High(d), air[(24 * d)..(24 * (d + 1))].Max(), 0.4);
            Assert.Equal(Low(d), air[(24 * d)..(24 * (d + 1))].Min(), 1.2);
        }

        Assert.Equal(Grids.Start.AddHours(100), table.Stamps[100]);
        Assert.Equal(Grids.FirstLine + 4, table.Lines[100]);
    }

    [Fact]
    public void A_day_that_stands_twice_is_taken_once()
    {
        var (table, _, repairs) = Of(30, rows => rows.Insert(11, (10, 40, -40)));
        Assert.Equal("1 days stand twice; the first was taken.", repairs[^1]);
        Assert.Equal(High(10), table.Values[WeatherField.Air][240..264].Max(), 0.4);
    }

    [Fact]
    public void A_day_that_is_missing_is_a_day_of_gaps_and_its_neighbours_stay_whole()
    {
        var (table, _, repairs) = Of(30, rows => rows.RemoveAt(12));
        Assert.Single(repairs);
        Assert.Equal(Enumerable.Range(288, 24), Enumerable.Range(0, 720).Where(h => double.IsNaN(table.Values[WeatherField.Air][h])));
        Assert.All(table.Lines[288..312], l => Assert.Equal(0, l));
    }

    // One in twenty may be a slip.
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    public void A_low_above_the_high_is_a_gap_and_more_than_one_in_twenty_are_refused(int turned, bool refused)
    {
        var (table, faults, repairs) = Of(30, rows =>
        {
            for (var t = 0; t < turned; t++)
                rows[5 + (7 * t)] = (5 + (7 * t), rows[5 + (7 * t)].Low, rows[5 + (7 * t)].High);
        });
        Assert.Equal(refused ? 0 : 1, repairs.Count(r => r == "On 1 days the low is above the high; they were taken as gaps."));
        Assert.Equal(refused ? [(Grids.FirstLine + 5, 0, "a high above the low of its day; on 2 days it is below it (columns exchanged, or their sign is swapped?)")] : [], faults.Select(f => (f.Line, f.Column, f.Expected)));
        Assert.Equal(24 * turned, table.Values[WeatherField.Air].Count(double.IsNaN));
    }

    [Theory]
    [InlineData(1, 5, 1, 23, 0, 19)]
    [InlineData(1, 5, 1, 25, 0, 21)]
    [InlineData(1, 25, 2, 28, 7, 28)]
    [InlineData(1, 12, 2, 19, 0, 20)]
    public void The_coldest_month_has_twenty_days_at_least(int month, int day, int toMonth, int toDay, int first, int count)
    {
        // Colder every day, so that the later of two months is the coldest where it is long enough.
        var winter = WinterMaker.Synthetic(ReferenceSites.Redmond, new(month, day, toMonth, toDay), WinterKind.Typical, 4, new());
        for (var h = 0; h < winter.Hours; h++)
            winter.AirC[h] = 10 - (h / 24) + (h % 24 / 24.0);
        var days = WinterDays.Of(winter);
        Assert.Equal(Enumerable.Range(first, count), days.ColdestMonth());
        for (var d = 0; d < days.Count; d += days.Count - 1)
        {
            var at = winter.AirC[days.FirstHour(d)];
            Assert.Equal((at + (11.5 / 24), at, at + (23 / 24.0)), (days.MeanC[d], days.LowC[d], days.HighC[d]));
            Assert.Equal(winter.GlobalWPerM2[days.FirstHour(d)..(days.FirstHour(d) + 24)].Sum(), days.LightWh[d], 1e-6);
        }
    }

    private static double High(int day) => 8 + (day % 3);

    private static double Low(int day) => -1 - (day % 4);

    private static (SourceTable Table, IReadOnlyList<InputFault> Faults, List<string> Repairs) Of(int count, Action<List<(int Day, double High, double Low)>> change)
    {
        var rows = Enumerable.Range(0, count).Select(d => (Day: d, High: High(d), Low: Low(d))).ToList();
        change(rows);
        var (faults, repairs) = (new FaultList(), new List<string>());
        var table = DailyHours.Of("w.csv", new()
        {
            Stamps = [.. rows.Select(r => Grids.Start.AddDays(r.Day))],
            Lines = [.. Enumerable.Range(Grids.FirstLine, rows.Count)],
            Values = new() { [WeatherField.High] = [.. rows.Select(r => r.High)], [WeatherField.Low] = [.. rows.Select(r => r.Low)] },
            Years = [Grids.Start.Year],
            IsTypical = false,
        }, Here, 1, faults, repairs);
        return (table, faults.Faults, repairs);
    }
}
