namespace DesignSearch.Climate;

/// <summary>What the reader of a weather file may be told beside the file.</summary>
public sealed record ReadingOptions
{
    /// <summary>Local standard time minus UTC [h]; overrides what the file says about its place, not about its stamps.</summary>
    public double? ZoneHours { get; init; }

    /// <summary>The place, for files that name none; only what the file leaves open is taken from it.</summary>
    public Place? Place { get; init; }
}
