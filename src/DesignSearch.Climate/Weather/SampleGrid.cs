using DesignSearch.Climate.Formats;

namespace DesignSearch.Climate.Weather;

/// <summary>The rows of a file on an even grid of stamps in local standard time; what is missing is NaN.</summary>
internal sealed class SampleGrid
{
    private const double HoursOfYear = 8760;

    private SampleGrid(DateTime start, int stepMin, bool wraps, Dictionary<WeatherField, double[]> values, int[] lines)
    {
        (Start, StepMin, Wraps, Values, Lines) = (start, stepMin, wraps, values, lines);
    }

    /// <summary>Local standard time of the stamp of slot 0.</summary>
    public DateTime Start { get; }

    public int StepMin { get; }

    /// <summary>True for a typical year, whose end is followed by its beginning.</summary>
    public bool Wraps { get; }

    public Dictionary<WeatherField, double[]> Values { get; }

    /// <summary>Line of the file behind each slot, 0 where there is none.</summary>
    public int[] Lines { get; }

    public int Count => Lines.Length;

    /// <summary>True for two years and more: a gap then costs the winter it lies in, not the file.</summary>
    public bool IsArchive => !Wraps && Count * StepHours >= 2 * HoursOfYear;

    public double StepHours => StepMin / 60.0;

    /// <summary>Rows that met a slot already taken.</summary>
    public List<int> DuplicateLines { get; } = [];

    /// <summary>Stamp of a slot in local standard time.</summary>
    public DateTime Stamp(int slot) => Start.AddMinutes((double)slot * StepMin);

    /// <summary>Lays a table on a grid.</summary>
    /// <param name="table">At least two rows.</param>
    /// <param name="toLocalHours">Added to the stamps to make them local standard time [h].</param>
    /// <param name="typical">A typical year in the nominal year.</param>
    public static SampleGrid Lay(SourceTable table, double toLocalHours, bool typical)
    {
        var step = TimeSteps.UsualMinutes(table.Stamps);
        var local = table.Stamps.Select(s => s.AddMinutes(Math.Round(toLocalHours * 60))).ToArray();
        var first = typical ? NominalStart(local, step) : local.Min();
        var count = typical ? 8760 * 60 / step : (int)Math.Round((local.Max() - first).TotalMinutes / step) + 1;
        var lines = new int[count];
        var values = table.Values.ToDictionary(v => v.Key, _ => Enumerable.Repeat(double.NaN, count).ToArray());
        var grid = new SampleGrid(first, step, typical, values, lines);
        for (var r = 0; r < local.Length; r++)
        {
            var slot = (int)Math.Round((local[r] - first).TotalMinutes / step);
            if (typical)
                slot = (slot % count + count) % count;
            if (lines[slot] != 0)
            {
                grid.DuplicateLines.Add(table.Lines[r]);
                continue;
            }

            lines[slot] = table.Lines[r];
            foreach (var (field, column) in table.Values)
                values[field][slot] = column[r];
        }

        return grid;
    }

    // The grid of a typical year starts with the first stamp of its local year, keeping the minutes of the stamps.
    private static DateTime NominalStart(DateTime[] local, int step)
    {
        var yearStart = new DateTime(TableReader.NominalYear, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
        var phase = ((local[0] - yearStart).TotalMinutes % step + step) % step;
        return yearStart.AddMinutes(phase);
    }
}
