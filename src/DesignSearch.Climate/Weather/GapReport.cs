using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Fills the gaps of every column of a grid, remembers which slots were filled and says so.</summary>
internal sealed class GapReport(SampleGrid grid, string file, FaultList faults, List<string> repairs)
{
    private const double StraightWeatherHours = 3;
    private const double NightHours = 24;
    private const double MostOfMonth = 0.10;
    private const double LeastOfMonthHours = 20 * 24;
    private readonly GapFiller filler = new(grid);

    /// <summary>Slots filled, by column.</summary>
    public Dictionary<WeatherField, bool[]> Filled { get; } = [];

    /// <summary>Stretches of an archive, first slot and length, that are too long to be filled, and months of which too much is missing.</summary>
    public List<(int First, int Count)> Unknown { get; } = [];

    /// <summary>Fills a column of the weather; a gap too long is a fault with its dates.</summary>
    public void FillWeather(WeatherField field, string name)
    {
        if (grid.Values.TryGetValue(field, out var values))
            Fill(field, name, values, values.Select(double.IsNaN).ToArray(), StraightWeatherHours);
    }

    /// <summary>Fills global irradiance by the clearness of its neighbours.</summary>
    /// <param name="global">Filled in place.</param>
    /// <param name="above">Irradiance above the atmosphere over the same intervals.</param>
    public void FillGlobal(double[] global, double[] above)
    {
        var clearness = new double[global.Length];
        for (var i = 0; i < global.Length; i++)
        {
            if (double.IsNaN(global[i]) && above[i] < 10)
                global[i] = 0;
            clearness[i] = above[i] < 10 ? 0 : global[i] / above[i];
        }

        var missing = global.Select(double.IsNaN).ToArray();
        BridgeNights(clearness, above, missing);
        Fill(WeatherField.Global, "global irradiance", clearness, missing, 2);
        for (var i = 0; i < global.Length; i++)
        {
            if (missing[i])
                global[i] = Math.Clamp(clearness[i], 0, 0.85) * above[i];
        }
    }

    // A gap that is dark on both sides has no neighbour in the sunlight: its nights belong to it.
    private static void BridgeNights(double[] clearness, double[] above, bool[] missing)
    {
        for (var way = -1; way <= 1; way += 2)
        {
            for (var i = way < 0 ? clearness.Length - 1 : 0; i >= 0 && i < clearness.Length; i += way)
            {
                var from = i - way;
                if (from >= 0 && from < clearness.Length && double.IsNaN(clearness[from]) && above[i] < 10 && !missing[i])
                    clearness[i] = double.NaN;
            }
        }
    }

    private void Fill(WeatherField field, string name, double[] values, bool[] filled, double straightHours)
    {
        Filled[field] = filled;
        var gaps = filler.Gaps(values);
        if (gaps.Count == 0)
            return;
        if (grid.IsArchive)
        {
            FillArchive(name, values, filled, gaps, straightHours);
            return;
        }

        var hours = filled.Count(f => f) * grid.StepHours;
        foreach (var gap in gaps)
        {
            if (gap.Count * grid.StepHours > GapFiller.LongestHours + NightHours)
                faults.Add(
                    file,
                    grid.Lines[filler.Slot(gap.First, values.Length)],
                    0, Dates(gap),
                    FormattableString.Invariant($"no gap longer than {GapFiller.LongestHours} h in the {name}"));
            else
                filler.Fill(values, gap, straightHours);
        }

        RefuseThinMonths(name, filled);
        var span = gaps.Count == 1 ? Dates(gaps[0]) : FormattableString.Invariant($"{gaps.Count} gaps, the longest {Dates(gaps.MaxBy(g => g.Count))}");
        repairs.Add(FormattableString.Invariant($"{hours:0.#} h of missing {name} were filled from the hours around them ({span})."));
    }

    private static readonly (int Months, int Hours) Cells = (12, 24);

    // Among many years a long gap takes the usual value of its month and hour, and its winter is left out.
    private void FillArchive(string name, double[] values, bool[] filled, List<(int First, int Count)> gaps, double straightHours)
    {
        var usual = UsualByMonthAndHour(values);
        var thin = Months(filled).Where(m => m.Share > MostOfMonth && m.Slots.Length * grid.StepHours > LeastOfMonthHours).ToArray();
        var before = Unknown.Count;
        // The nights beside a gap in the light belong to it.
        var longest = straightHours < StraightWeatherHours ? GapFiller.LongestHours + NightHours : GapFiller.LongestHours;
        var lost = gaps.Where(g => g.Count * grid.StepHours > longest).ToArray();
        foreach (var gap in lost)
        {
            Unknown.Add(gap);
            for (var i = gap.First; i < gap.First + gap.Count; i++)
                values[i] = usual[grid.Stamp(i).Month - 1, grid.Stamp(i).Hour];
        }

        foreach (var gap in gaps.Except(lost))
            filler.Fill(values, gap, straightHours);
        foreach (var (slots, _) in thin)
            Unknown.Add((slots[0], slots[^1] - slots[0] + 1));
        if (gaps.Except(lost).ToArray() is { Length: > 0 } filledGaps)
            repairs.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"{filledGaps.Sum(g => g.Count) * grid.StepHours:0.#} h of missing {name} were filled from the hours around them "
                    + $"(gaps: {filledGaps.Length}, the longest {Dates(filledGaps.MaxBy(g => g.Count))})."));
        if (Unknown.Count > before)
            repairs.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"Winters that touch what is missing of the {name} are left out (gaps over {longest} h: {lost.Length}"
                    + $"{(lost.Length > 0 ? ", the longest " + Dates(lost.MaxBy(g => g.Count)) : "")}; "
                    + $"months that lack more than a tenth: {thin.Length})."));
    }

    private double[,] UsualByMonthAndHour(double[] values)
    {
        var (sum, count) = (new double[Cells.Months, Cells.Hours], new int[Cells.Months, Cells.Hours]);
        for (var i = 0; i < values.Length; i++)
        {
            if (double.IsNaN(values[i]))
                continue;
            var stamp = grid.Stamp(i);
            sum[stamp.Month - 1, stamp.Hour] += values[i];
            count[stamp.Month - 1, stamp.Hour]++;
        }

        var all = sum.Cast<double>().Sum() / Math.Max(1, count.Cast<int>().Sum());
        for (var m = 0; m < Cells.Months; m++)
        {
            for (var h = 0; h < Cells.Hours; h++)
                sum[m, h] = count[m, h] > 0 ? sum[m, h] / count[m, h] : all;
        }

        return sum;
    }

    // A month of which a tenth and more was made up here is no record of that month.
    private void RefuseThinMonths(string name, bool[] filled)
    {
        foreach (var (slots, share) in Months(filled))
        {
            if (share > MostOfMonth && slots.Length * grid.StepHours > LeastOfMonthHours)
                faults.Add(
                    file, 0, 0, "",
                    FormattableString.Invariant($"at most 10 % of the {name} of a month missing; {share:P0} are missing in month {grid.Stamp(slots[0]).Month}"));
        }
    }

    private IEnumerable<(int[] Slots, double Share)> Months(bool[] filled) =>
        Enumerable.Range(0, filled.Length).GroupBy(i => grid.Stamp(i).Year * 12 + grid.Stamp(i).Month - 1)
            .Select(m => (Slots: m.ToArray(), Share: m.Count(i => filled[i]) / (double)m.Count()));

    private string Dates((int First, int Count) gap)
    {
        var format = grid.Wraps ? "d MMMM HH:mm" : "yyyy-MM-dd HH:mm";
        var from = grid.Stamp(gap.First);
        var to = grid.Stamp(gap.First + gap.Count - 1);
        return from.ToString(format, CultureInfo.InvariantCulture) + (gap.Count > 1 ? " to " + to.ToString(format, CultureInfo.InvariantCulture) : "");
    }
}
