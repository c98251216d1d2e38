using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What a thermometer outdoors cannot have written, at the ends of what it can.</summary>
public sealed class AirCheckTests
{
    private const int Rows = 400;
    private const int At = 200;

    [Theory]
    [InlineData(1, 10.1, true)]
    [InlineData(1, 9.9, false)]
    [InlineData(1, -10.1, true)]
    [InlineData(1, -9.9, false)]
    [InlineData(2, 14.1, true)]
    [InlineData(2, 13.9, false)]
    [InlineData(3, -14.1, true)]
    [InlineData(3, -13.9, false)]
    [InlineData(4, 30, false)]
    public void A_jump_and_back_within_three_hours_is_a_gap(int hours, double jumpK, bool found)
    {
        var (air, faults, repairs, _) = Run(60, Grids.Of(Rows, i => (i % 3 == 0 ? 10 : i % 3 == 1 ? 10.02 : 10.04) + (i >= At && i < At + hours ? jumpK + (0.01 * i) - (0.01 * At) : 0)));
        Assert.Empty(faults);
        Assert.Equal(found ? Enumerable.Range(At, hours) : [], Enumerable.Range(0, Rows).Where(i => double.IsNaN(air[i])));
        Assert.Equal(found ? [$"{hours} values of the air temperature jump away from the hours around them and back, the first in line {At + Grids.FirstLine}; they were taken as gaps."] : [], repairs);
    }

    // Rows of four hours: one of them may be a slip, two are weather.
    [Theory]
    [InlineData(1, true)]
    [InlineData(2, false)]
    public void Of_rows_that_are_far_apart_one_may_jump(int rows, bool found) =>
        Assert.Equal(found ? rows : 0, Run(240, Grids.Of(Rows, i => Rising(i, 0.001) + (i >= At && i < At + rows ? 20 : 0))).Air.Count(double.IsNaN));

    // A front: the air before and after it is not the same.
    [Theory]
    [InlineData(4.9, true)]
    [InlineData(5.1, false)]
    public void What_is_another_air_afterwards_is_no_jump_and_back(double laterK, bool found) =>
        Assert.Equal(found, Run(60, Grids.Of(Rows, i => Rising(i, 0.001) + (i == At ? 20 : i > At ? laterK : 0))).Repairs.Count == 1);

    [Theory]
    [InlineData(60, 35, "")]
    [InlineData(60, 36, "gap")]
    [InlineData(60, 48, "gap")]
    [InlineData(60, 49, "fault")]
    [InlineData(30, 35, "")]
    [InlineData(30, 36, "gap")]
    [InlineData(120, 60, "")]
    public void Air_that_stands_still_is_a_sensor_stuck(int minutes, int hours, string what)
    {
        var (count, from) = (hours * 60 / minutes, 50);
        var (air, faults, repairs, _) = Run(minutes, Grids.Of(Rows, i => i >= from && i < from + count ? 3.25 : Rising(i, 0.013)));
        Assert.Equal(what == "gap" ? count : 0, air.Count(double.IsNaN));
        Assert.Equal(what == "gap" ? [$"The air temperature stands at 3.25 °C for {hours} h from line 60: a sensor stuck; the hours were taken as gaps."] : [], repairs);
        Assert.Equal(what == "fault" ? [(60, "3.25", $"air that moves; for {hours} h from here it stands still (a sensor stuck, or a cell copied down?)")] : [], faults.Select(f => (f.Line, f.Value, f.Expected)));
    }

    // Whole degrees stand still for longer without being wrong.
    [Theory]
    [InlineData(71, false)]
    [InlineData(72, true)]
    public void Whole_degrees_may_stand_still_for_three_days_less_an_hour(int hours, bool refused) =>
        Assert.Equal(refused, Run(60, Grids.Of(Rows, i => i >= 50 && i < 50 + hours ? 3 : 4 + (i * 7 % 5))).Faults.Count == 1);

    // The first change comes after the first stretch, so that so many stretches have one change less.
    [Theory]
    [InlineData(2, 32, "doubt")]
    [InlineData(3, 32, "doubt")]
    [InlineData(3, 31, "")]
    [InlineData(6, 32, "doubt")]
    [InlineData(12, 32, "fault")]
    [InlineData(24, 32, "fault")]
    [InlineData(24, 31, "")]
    [InlineData(4, 60, "doubt")]
    public void Air_that_changes_every_few_hours_only_is_told(int hours, int stretches, string what)
    {
        var (_, faults, _, doubts) = Run(60, Grids.Of(hours * stretches, i => 5 + (i / hours * 7 % 11 * 0.3)));
        // Every fourth hour is every second one too.
        var told = hours == 4 ? 2 : hours;
        Assert.Equal(what == "doubt" ? 1 : 0, doubts.Count(d => d.StartsWith($"The air temperature changes every {told} h only: what lies between is not known", StringComparison.Ordinal)));
        Assert.Equal(what == "fault" ? [$"air at least every 6 h; it changes every {hours} h only (daily means? Daily highs and lows, not means, can be made into hours)"] : [], faults.Select(f => f.Expected));
        Assert.Equal(what == "doubt" ? 1 : 0, doubts.Count);
    }

    // A clock that was set in between moves the beat; a few changes off it do not hide it.
    [Theory]
    [InlineData(4, true)]
    [InlineData(20, false)]
    public void A_few_changes_off_the_beat_do_not_hide_it(int off, bool told) =>
        Assert.Equal(told, Run(60, Grids.Of(900, i => 5 + (i / 3 * 7 % 11 * 0.3) + (i % 3 == 1 && i / 3 % (300 / off) == 1 ? 0.1 : 0))).Doubts.Count == 1);

    [Theory]
    [InlineData(60, 0)]
    [InlineData(120, 2)]
    [InlineData(180, 3)]
    [InlineData(720, 12)]
    public void Rows_that_are_far_apart_are_told_without_counting(int minutes, int hours)
    {
        var (_, faults, _, doubts) = Run(minutes, Grids.Of(40, i => Rising(i, 0.17)));
        Assert.Equal(hours is 2 or 3 ? 1 : 0, doubts.Count);
        Assert.Equal(hours == 12 ? 1 : 0, faults.Count);
    }

    private static double Rising(int i, double byK) => 10 + (byK * i);

    private static (double[] Air, IReadOnlyList<InputFault> Faults, List<string> Repairs, List<string> Doubts) Run(int minutes, double[] values)
    {
        var (grid, faults, repairs, doubts) = (Grids.Every(minutes, (WeatherField.Air, values)), new FaultList(), new List<string>(), new List<string>());
        new AirCheck("w.csv", grid, faults, repairs, doubts).Run();
        // What is told of the whole column has no line; no fault here has a place within its line.
        Assert.All(faults.Faults, f => Assert.True(f.Column == 0 && f.Line == (f.Value.Length > 0 ? 60 : 0), f.ToString()));
        return (grid.Values[WeatherField.Air], faults.Faults, repairs, doubts);
    }
}
