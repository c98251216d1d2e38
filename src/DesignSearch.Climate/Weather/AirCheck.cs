using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Asks a column of air whether a thermometer outdoors, read often enough, could have written it: spikes, stuck values, cadence.</summary>
internal sealed class AirCheck(string path, SampleGrid grid, FaultList faults, List<string> repairs, List<string> doubts)
{
    private const int LongestSpikeHours = 3;
    private const double SingleSpikeK = 10;
    private const double LongerSpikeK = 14;
    private const double StuckHours = 36;
    private const double StuckHoursOfWholeDegrees = 72;
    private const int LeastChanges = 30;
    private const double OnTheBeat = 0.97;
    private static readonly int[] Beats = [24, 12, 6, 3, 2];
    private readonly double[] air = grid.Values[WeatherField.Air];

    /// <summary>Runs all three; what is sure is repaired.</summary>
    public void Run()
    {
        Spikes();
        Stuck();
        Cadence();
    }

    // A value far off both its neighbours, which agree: for three hours at most.
    private void Spikes()
    {
        var (count, first) = (0, -1);
        for (var length = 1; length <= Math.Max(1, LongestSpikeHours / grid.StepHours); length++)
        {
            var least = length * grid.StepHours <= 1 ? SingleSpikeK : LongerSpikeK;
            for (var i = 1; i + length < air.Length; i++)
            {
                if (!IsSpike(i, length, least))
                    continue;
                first = first < 0 ? i : first;
                count += length;
                Array.Fill(air, double.NaN, i, length);
            }
        }

        if (count > 0)
            repairs.Add(FormattableString.Invariant(
                $"{count} values of the air temperature jump away from the hours around them and back, the first in line {grid.Lines[first]}; they were taken as gaps."));
    }

    private bool IsSpike(int from, int length, double least)
    {
        var (before, after) = (air[from - 1], air[from + length]);
        if (double.IsNaN(before) || double.IsNaN(after) || Math.Abs(before - after) > least / 2)
            return false;
        var (up, down) = (true, true);
        for (var i = from; i < from + length; i++)
        {
            up &= air[i] - Math.Max(before, after) > least;
            down &= Math.Min(before, after) - air[i] > least;
        }

        return up || down;
    }

    private void Stuck()
    {
        var whole = air.Where(a => !double.IsNaN(a)).All(a => a == Math.Round(a));
        var least = (whole ? StuckHoursOfWholeDegrees : StuckHours) / grid.StepHours;
        for (var i = 0; i < air.Length;)
        {
            var end = i + 1;
            while (end < air.Length && air[end] == air[i])
                end++;
            if (end - i >= least && grid.StepHours <= 1)
                Stuck(i, end - i);
            i = end;
        }
    }

    private void Stuck(int first, int count)
    {
        var (hours, value) = (count * grid.StepHours, air[first]);
        if (hours > GapFiller.LongestHours && !grid.IsArchive)
        {
            faults.Add(
                path, grid.Lines[first], 0, value.ToString("0.##", CultureInfo.InvariantCulture),
                FormattableString.Invariant($"air that moves; for {hours:0} h from here it stands still (a sensor stuck, or a cell copied down?)"));
            return;
        }

        Array.Fill(air, double.NaN, first, count);
        repairs.Add(string.Create(
            CultureInfo.InvariantCulture,
            $"The air temperature stands at {value:0.##} °C for {hours:0} h from line {grid.Lines[first]}: a sensor stuck; "
                + $"the hours were taken as gaps."));
    }

    private void Cadence()
    {
        var hours = grid.StepHours >= 2 ? (int)grid.StepHours : Beats.FirstOrDefault(HoldsFor);
        if (hours >= 12)
            faults.Add(
                path, 0, 0, "",
                FormattableString.Invariant($"air at least every 6 h; it changes every {hours} h only (daily means? Daily highs and lows, not means, can be made into hours)"));
        else if (hours >= 2)
            doubts.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The air temperature changes every {hours} h only: what lies between is not known, and the coldest hours are cut off. "
                    + $"Expect fewer frost hours than there are; take hourly values if there are any."));
    }

    // Changes fall on the same hour of every stretch and nowhere else.
    private bool HoldsFor(int hours)
    {
        var stretch = (int)Math.Round(hours / grid.StepHours);
        var changes = new int[stretch];
        for (var i = 1; i < air.Length; i++)
        {
            if (!double.IsNaN(air[i]) && !double.IsNaN(air[i - 1]) && air[i] != air[i - 1])
                changes[i % stretch]++;
        }

        return changes.Sum() > LeastChanges && changes.Max() > OnTheBeat * changes.Sum();
    }
}
