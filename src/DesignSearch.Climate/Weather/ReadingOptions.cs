using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Weather;

/// <summary>What the reader of a weather file may be told beside the file.</summary>
public sealed record ReadingOptions
{
    /// <summary>Local standard time minus UTC at the place [h]; overrides what the file says about its place, not about its stamps.</summary>
    public double? ZoneHours { get; init; }

    /// <summary>Zone of the stamps [h]; overrides the file, for one whose own word is wrong.</summary>
    public double? StampZoneHours { get; init; }

    /// <summary>The place, for files that name none; only what the file leaves open is taken from it.</summary>
    public Place? Place { get; init; }

    /// <summary>Monthly means from which sun, wind and humidity are made when the file has the temperature only.</summary>
    public MonthlyClimate? Monthly { get; init; }

    /// <summary>Seed of what is made up.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>
    /// Folder with formats of the builder's own, one TOML file each; tried before the usual ones. None: the folder "formats" beside
    /// the file, where there is one.
    /// </summary>
    public string? FormatsFolder { get; init; }
}
