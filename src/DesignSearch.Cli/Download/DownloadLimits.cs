namespace DesignSearch.Cli.Download;

/// <summary>What is borne of a service before it is given up.</summary>
/// <param name="Answer">Longest wait for the beginning of an answer.</param>
/// <param name="Whole">Longest wait for all of it, the second attempt with it.</param>
/// <param name="Pause">Wait between the first attempt and the second.</param>
/// <param name="Bytes">Largest answer; nineteen years of hours are some 11 MB.</param>
public sealed record DownloadLimits(TimeSpan Answer, TimeSpan Whole, TimeSpan Pause, long Bytes)
{
    /// <summary>A minute for the beginning, four for the whole, three seconds between, 60 MB.</summary>
    public static DownloadLimits Usual { get; } = new(TimeSpan.FromMinutes(1), TimeSpan.FromMinutes(4), TimeSpan.FromSeconds(3), 60_000_000);
}
