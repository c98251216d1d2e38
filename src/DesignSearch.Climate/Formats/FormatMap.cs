namespace DesignSearch.Climate;

/// <summary>How to read one format: data, not code.</summary>
internal sealed record FormatMap
{
    public required string Id { get; init; }

    public required string Provider { get; init; }

    /// <summary>Words that must all stand in the head of the file.</summary>
    public required IReadOnlyList<string> Detect { get; init; }

    public HeadKind Head { get; init; }

    /// <summary>Label, name or field number (from 1) by key: latitude, longitude, elevation, zone, name, offsetHours.</summary>
    public IReadOnlyDictionary<string, string> HeadKeys { get; init; } = new Dictionary<string, string>();

    /// <summary>Columns that hold the stamp, joined by a space.</summary>
    public required IReadOnlyList<string> TimeColumns { get; init; }

    /// <summary>Pattern of the joined stamp, see <see cref="StampPattern"/>.</summary>
    public required string TimePattern { get; init; }

    /// <summary>Zone of the stamps [h]; none: the head's.</summary>
    public double? StampZoneHours { get; init; }

    public bool TypicalYear { get; init; }

    public StampMeaning Radiation { get; init; }

    public StampMeaning Weather { get; init; }

    public required IReadOnlyList<FieldMap> Fields { get; init; }

    public IReadOnlyList<double> MissingCodes { get; init; } = [-9900, -9999, -999];

    public FieldOrigin WeatherOrigin { get; init; } = FieldOrigin.Modelled;

    public FieldOrigin RadiationOrigin { get; init; } = FieldOrigin.Modelled;
}
