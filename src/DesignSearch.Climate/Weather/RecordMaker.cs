using System.Globalization;
using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Sun;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Carries one file from its lines to a record.</summary>
internal sealed class RecordMaker(string path, FormatMap map, SourceText source, ReadingOptions options)
{
    private const int MostYears = 120;

    // No station was silent for so long and spoke again (own choice).
    private const int MostYearsApart = 30;
    private const int MostFaults = 20;
    private const double LeastKnown = 0.5;

    private static readonly (WeatherField Field, string Name)[] Spare =
    [
        (WeatherField.DewPoint, "dew point"), (WeatherField.Humidity, "humidity"), (WeatherField.Wind, "wind"), (WeatherField.WindAt2M, "wind at 2 m"),
        (WeatherField.SkyLongWave, "sky radiation"), (WeatherField.BeamNormal, "beam"),
    ];

    private readonly FaultList faults = new();
    private readonly List<string> repairs = [];
    private readonly List<string> doubts = [];

    public WeatherRecord Make()
    {
        var head = new HeadReading(path, map, source, options, faults);
        var table = new TableReader(path, map, head.Years, source, faults).Read(repairs);
        faults.ThrowIfAny();

        var place = head.Place;
        if (table.IsUtc)
            head.StampsAreUtc();
        CheckYears(table);
        faults.ThrowIfAny();
        if (map.IsDaily)
            table = DailyHours.Of(path, table, place, head.StampZoneHours, faults, repairs);
        if (table.Values[WeatherField.Air].All(double.IsNaN))
            faults.Add(path, 0, 0, "", "an air temperature; every row lacks it");
        faults.ThrowIfAny();
        DropThin(table);
        LightColumns.AddGlobal(table.Values);
        var grid = SampleGrid.Lay(table, place.ZoneHours - head.StampZoneHours, table.IsTypical);
        if (grid.DuplicateLines.Count > grid.Count / 20)
            faults.Add(
                path, grid.DuplicateLines[0], 0, "",
                FormattableString.Invariant(
                    $"every time once; {grid.DuplicateLines.Count} rows repeat an earlier one (several places or zones in one file?)"));
        else if (grid.DuplicateLines.Count > 0)
            repairs.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"{(grid.DuplicateLines.Count == 1 ? "1 row repeats" : $"{grid.DuplicateLines.Count} rows repeat")} the time of an "
                    + $"earlier row and {(grid.DuplicateLines.Count == 1 ? "was" : "were")} left out, the first in line "
                    + $"{grid.DuplicateLines[0]}."));
        CheckRows(grid);
        faults.ThrowIfAny();
        new RangeCheck(path, grid, faults, repairs).Clean();
        faults.ThrowIfAny();
        OtherDoubts.Say(path, grid, faults, doubts);
        faults.ThrowIfAny();
        new AirCheck(path, grid, faults, repairs, doubts).Run();

        var sun = new SunTrack(place, grid.Start.AddHours(-place.ZoneHours), grid.Stamp(grid.Count).AddHours(-place.ZoneHours));
        var (fit, isMean) = new SunCheck(path, grid, sun, head, faults, repairs).Run();
        if (faults.IsEmpty)
            new AirCourse(path, grid, head, faults, doubts).Run();
        faults.ThrowIfAny();
        return new RecordBuilder(path, map, place, grid, sun, fit, isMean, faults, repairs)
        {
            Doubts = doubts,
            Period = Period(table),
            Weather = head.Weather,
            Options = options,
        }.Build();
    }

    // A column that is empty for more than half of the rows is no column: many stations have no anemometer, and interfaces list what they do not have.
    private void DropThin(SourceTable table)
    {
        foreach (var (field, name) in Spare)
        {
            if (!table.Values.TryGetValue(field, out var values))
                continue;
            var known = values.Count(v => !double.IsNaN(v)) / (double)values.Length;
            if (known >= LeastKnown)
                continue;
            table.Values.Remove(field);
            if (known > 0)
                repairs.Add(FormattableString.Invariant($"The {name} is known in {100 * known:0} % of the rows only; it was not used."));
        }
    }

    // One year typed wrongly would ask for a grid of centuries.
    private void CheckYears(SourceTable table)
    {
        var middle = table.Stamps.Order().ElementAt(table.Stamps.Length / 2);
        foreach (var (stamp, line) in table.Stamps.Zip(table.Lines).Where(s => Math.Abs(s.First.Year - middle.Year) > MostYears).Take(MostFaults))
            faults.Add(
                path, line, 0,
                stamp.Year.ToString(CultureInfo.InvariantCulture),
                FormattableString.Invariant($"a year within {MostYears} of the others, which lie about {middle.Year}"));
        if (faults.IsEmpty)
            CheckLonely([.. table.Stamps.Zip(table.Lines).OrderBy(s => s.First)]);
    }

    // One row of another generation would be a record of decades of which nothing is known.
    private void CheckLonely((DateTime Stamp, int Line)[] rows)
    {
        for (var i = 1; i < rows.Length; i++)
        {
            if (rows[i].Stamp.Year - rows[i - 1].Stamp.Year <= MostYearsApart)
                continue;
            var (lonely, next) = i <= rows.Length / 2 ? (rows[i - 1], rows[i]) : (rows[i], rows[i - 1]);
            faults.Add(
                path, lonely.Line, 0,
                lonely.Stamp.Year.ToString(CultureInfo.InvariantCulture),
                FormattableString.Invariant($"a year within {MostYearsApart} of that of the next row in time, {next.Stamp.Year}"));
            return;
        }
    }

    // Rows that are missing altogether are said once, not for every column.
    private void CheckRows(SampleGrid grid)
    {
        if (grid.IsArchive)
            return;
        var format = grid.Wraps ? "d MMMM HH:mm" : "yyyy-MM-dd HH:mm";
        foreach (var (first, count) in new GapFiller(grid).Gaps([.. grid.Lines.Select(l => l == 0 ? double.NaN : l)]))
        {
            if (count * grid.StepHours <= GapFiller.LongestHours)
                continue;
            var (from, to) = (grid.Stamp(first).ToString(format, CultureInfo.InvariantCulture), grid.Stamp(first + count - 1).ToString(format, CultureInfo.InvariantCulture));
            faults.Add(
                path, first > 0 ? grid.Lines[first - 1] : 0, 0, "",
                FormattableString.Invariant($"no gap longer than {GapFiller.LongestHours} h; the rows from {from} to {to} are missing"));
        }
    }

    private static string Period(SourceTable table)
    {
        var years = table.Years;
        var span = years.Min == years.Max ? years.Min.ToString(CultureInfo.InvariantCulture) : FormattableString.Invariant($"{years.Min} to {years.Max}");
        return table.IsTypical ? "typical year, months from " + span : span;
    }
}
