using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Climate;

/// <summary>Carries one file from its lines to a record.</summary>
internal sealed class RecordMaker(string path, FormatMap map, string[] lines, ReadingOptions options)
{
    private readonly FaultList faults = new();
    private readonly List<string> repairs = [];

    public WeatherRecord Make()
    {
        var head = new HeadFacts(path, map, lines);
        var place = ReadPlace(head);
        var table = new TableReader(path, map, lines, faults).Read();
        faults.ThrowIfAny();

        var stampZone = map.StampZoneHours ?? head.Number("stampZone", -14, 14, "a zone in hours", faults) ?? head.Number("zone", -14, 14, "a zone in hours", faults) ?? place.ZoneHours;
        var grid = SampleGrid.Lay(table, place.ZoneHours - stampZone, map.TypicalYear);
        if (grid.DuplicateLines.Count > 0)
            repairs.Add(FormattableString.Invariant($"{grid.DuplicateLines.Count} rows repeat the time of an earlier row and were left out, the first in line {grid.DuplicateLines[0]}."));
        var sun = new SunTrack(place, grid.Start.AddHours(-place.ZoneHours), grid.Stamp(grid.Count).AddHours(-place.ZoneHours));
        var fit = FitSun(grid, sun, place, head.Number("offsetHours", -1, 1, "hours from −1 to 1", faults) ?? 0);
        return new RecordBuilder(path, map, place, grid, sun, fit, IsMean(fit), faults, repairs) { Period = Period() }.Build();
    }

    private Place ReadPlace(HeadFacts head)
    {
        var known = options.Place;
        var latitude = head.Number("latitude", -90, 90, "a latitude from −90 to 90 in degrees, south negative", faults) ?? known?.LatitudeDeg;
        var longitude = head.Number("longitude", -180, 180, "a longitude from −180 to 180 in degrees, west negative", faults) ?? known?.LongitudeDeg;
        var elevation = head.Number("elevation", -500, 9000, "metres above the sea", faults) ?? known?.ElevationM ?? 0;
        var zone = options.ZoneHours ?? head.Number("localZone", -14, 14, "a zone in hours", faults) ?? head.Number("zone", -14, 14, "a zone in hours", faults) ?? known?.ZoneHours;
        if (latitude is null || longitude is null)
            faults.Add(path, 1, 0, "", "latitude and longitude in the head of the file");
        return new(
            head.Text("name") ?? known?.Name ?? Path.GetFileNameWithoutExtension(path),
            latitude ?? 0, longitude ?? 0, elevation, zone ?? Math.Round((longitude ?? 0) / 15));
    }

    private SunFit FitSun(SampleGrid grid, SunTrack sun, Place place, double offsetHours)
    {
        var declared = map.Radiation switch
        {
            StampMeaning.Ending => -grid.StepMin / 2.0,
            StampMeaning.Starting => grid.StepMin / 2.0,
            _ => offsetHours * 60,
        };
        var (found, correlation) = SunFitter.Find(grid, grid.Values[WeatherField.Global], sun, place.ZoneHours);
        var middle = grid.StepMin / 2.0;
        var used = map.Radiation == StampMeaning.InstantOrStarting && Math.Abs(found - middle) < Math.Abs(found - declared) ? middle : declared;
        if (used != declared)
            repairs.Add(FormattableString.Invariant($"The sun says that a row is the mean of the hour that starts at its stamp, not the value {declared:0.#} min after it as the head has it; it was read so."));
        return new(declared, found, used, correlation);
    }

    private bool IsMean(SunFit fit) => map.Radiation is StampMeaning.Ending or StampMeaning.Starting || (map.Radiation == StampMeaning.InstantOrStarting && fit.UsedMin != fit.DeclaredMin);

    // The years the rows carry, before a typical year hides them.
    private string Period()
    {
        var years = new SortedSet<int>();
        foreach (var line in lines)
        {
            var first = line.Split(',')[0].Trim('"', ' ');
            if (StampPattern.TryRead(map.TimePattern.Split(' ')[0], first.Split(' ')[0], out var day, out _))
                years.Add(day.Year);
        }

        if (years.Count == 0)
            return "";
        var span = years.Min == years.Max ? years.Min.ToString(CultureInfo.InvariantCulture) : FormattableString.Invariant($"{years.Min} to {years.Max}");
        return map.TypicalYear ? "typical year, months from " + span : span;
    }
}
