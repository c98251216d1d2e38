namespace DesignSearch.Layouts.Design;

/// <summary>A danger that goes with the parts of a layout.</summary>
/// <param name="Topic">A word or two: mains, hot water, wind …</param>
/// <param name="Text">The warning, in plain sentences, deferring to local codes and licensed work.</param>
public sealed record Caution(string Topic, string Text)
{
    /// <summary>The worst that can come of it.</summary>
    public Harm Harm { get; init; } = Harm.Injures;
}
