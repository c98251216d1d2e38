using DesignSearch.Climate.Formats;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>What the head of a file and the options say together: place, zones, meaning of the stamps.</summary>
internal sealed class HeadReading
{
    private const string ZoneText = "a zone in hours from UTC, −12 to 14";
    private readonly HeadFacts head;
    private readonly FaultList faults;

    public HeadReading(string path, FormatMap map, SourceText source, ReadingOptions options, FaultList faults)
    {
        head = new HeadFacts(path, map, source);
        this.faults = faults;
        Place = ReadPlace(path, map.Head, options);
        var zoneOfStamps = map.Zone switch
        {
            "utc" => 0,
            "longitude" => head.Text("utc") is null ? Math.Round(Place.LongitudeDeg / 15) : 0,
            _ => Zone("stamp_zone") ?? OffsetHours() ?? Zone("zone") ?? Place.ZoneHours,
        };
        ZoneIsFixed = map.Zone == "utc" && options.StampZoneHours is null;
        StampZoneHours = options.StampZoneHours ?? zoneOfStamps;
        OffsetMin = 60 * (head.Number("offset_hours", -1, 1, "hours from −1 to 1", faults) ?? 0);
        (Radiation, Weather) = Stamps(map);
        Years = Word("years", ["real", "typical"]) switch { "real" => YearKind.Real, "typical" => YearKind.Typical, _ => map.Years };
        if (head.Text("slope") is { } slope && !slope.StartsWith('0'))
            head.Fault("slope", "slope 0: the light of this file fell on a tilted plane; ask the provider for slope 0", faults);
    }

    public Place Place { get; }

    public double StampZoneHours { get; private set; }

    /// <summary>True when the format leaves no doubt about the zone of its stamps.</summary>
    public bool ZoneIsFixed { get; private set; }

    /// <summary>Middle of the radiation after the stamp, where the head says so [min].</summary>
    public double OffsetMin { get; }

    public StampMeaning Radiation { get; }

    public StampMeaning Weather { get; }

    public YearKind Years { get; }

    /// <summary>Takes it that the stamps named their zone themselves and were brought to UTC.</summary>
    public void StampsAreUtc() => (StampZoneHours, ZoneIsFixed) = (0, true);

    private Place ReadPlace(string path, HeadKind kind, ReadingOptions options)
    {
        var known = options.Place;
        var latitude = head.Number("latitude", -90, 90, "a latitude from −90 to 90 in degrees, south negative", faults) ?? known?.LatitudeDeg;
        var longitude = head.Number("longitude", -180, 180, "a longitude from −180 to 180 in degrees, west negative", faults) ?? known?.LongitudeDeg;
        var elevation = head.Number("elevation", -500, 9000, "metres above the sea", faults) ?? known?.ElevationM ?? 0;
        var offset = OffsetHours();
        var zone = options.ZoneHours ?? Zone("local_zone") ?? Zone("zone") ?? (offset == 0 ? null : offset) ?? known?.ZoneHours;
        if ((latitude is null && head.Text("latitude") is null) || (longitude is null && head.Text("longitude") is null))
            faults.Add(
                path, 1, 0, "",
                kind == HeadKind.Labels
                    ? "latitude and longitude; write them above the column names as '# latitude: -45.1' and '# longitude: 169.3', or name "
                        + "the place in the scenario and read the file with --for RUN"
                    : "latitude and longitude in the file; name the place in the scenario and read the file with --for RUN");
        return new(
            head.Text("name") ?? known?.Name ?? Path.GetFileNameWithoutExtension(path),
            latitude ?? 0, longitude ?? 0, elevation, zone ?? Math.Round((longitude ?? 0) / 15));
    }

    private (StampMeaning Radiation, StampMeaning Weather) Stamps(FormatMap map) => Word("stamp", ["start", "end", "instant"]) switch
    {
        "start" => (StampMeaning.Starting, StampMeaning.Starting),
        "end" => (StampMeaning.Ending, StampMeaning.Ending),
        "instant" => (StampMeaning.Instant, StampMeaning.Instant),
        _ => (map.Radiation, map.Weather),
    };

    private string? Word(string key, string[] words)
    {
        if (head.Text(key) is not { } word)
            return null;
        if (words.Contains(word.ToLowerInvariant()))
            return word.ToLowerInvariant();
        head.Fault(key, "one of " + string.Join(", ", words), faults);
        return null;
    }

    private double? Zone(string key) => head.Number(key, -12, 14, ZoneText, faults);

    private double? OffsetHours() => head.Number("offset_seconds", -12 * 3600, 14 * 3600, "seconds from UTC", faults) / 3600;
}
