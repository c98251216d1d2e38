using DesignSearch.Climate.Weather;
using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>How to read one format: data, not code. One TOML file each.</summary>
internal sealed record FormatMap
{
    public required string Title { get; init; }

    public required string Provider { get; init; }

    /// <summary>Words that must all stand in the head of the file; none: the column names decide.</summary>
    public required IReadOnlyList<string> Detect { get; init; }

    public required HeadKind Head { get; init; }

    /// <summary>Label, name, field number (from 1) or expression by key.</summary>
    public required IReadOnlyDictionary<string, string> HeadKeys { get; init; }

    /// <summary>Where the rows stand.</summary>
    public required TableMap Table { get; init; }

    /// <summary>True when rows come at any minute and each whole hour takes what was read nearest to it, within half an hour.</summary>
    public required bool NearestHours { get; init; }

    /// <summary>Columns that hold the stamp, joined by a space; the first set that is there counts.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> TimeColumns { get; init; }

    /// <summary>Patterns of the joined stamp, see <see cref="StampPattern"/>; the first that fits the rows counts.</summary>
    public required IReadOnlyList<string> TimePatterns { get; init; }

    /// <summary>Zone of the stamps: head, utc or longitude.</summary>
    public required string Zone { get; init; }

    public required YearKind Years { get; init; }

    /// <summary>True when the clock may keep daylight saving.</summary>
    public required bool CivilClock { get; init; }

    public required StampMeaning Radiation { get; init; }

    public required StampMeaning Weather { get; init; }

    public required IReadOnlyList<FieldMap> Fields { get; init; }

    public IReadOnlyList<double> MissingCodes { get; init; } = [-9900, -9999, -9999.9, -999, -99.9, 9999, 99999];

    public required FieldOrigin WeatherOrigin { get; init; }

    public required FieldOrigin RadiationOrigin { get; init; }

    /// <summary>True when a row is a day with its highest and lowest air.</summary>
    public bool IsDaily => Fields.Any(f => f.Field == WeatherField.High);

    /// <summary>True for a number that means "missing" anywhere in the format.</summary>
    public bool IsMissing(string text) => PlainNumber.TryRead(text, out var value) && MissingCodes.Contains(value);
}
