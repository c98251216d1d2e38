namespace DesignSearch.Layouts.Design;

/// <summary>A danger that goes with the parts of a layout.</summary>
/// <param name="Topic">A word or two: mains, hot water, wind …</param>
/// <param name="Text">The warning, in plain sentences, deferring to local codes and licensed work.</param>
public sealed record Caution(string Topic, string Text)
{
    /// <summary>The worst that can come of it.</summary>
    public Harm Harm { get; init; } = Harm.Injures;

    /// <summary>It comes true where the air of the house falls below this [°C]; null for a danger that the cold has no part in.</summary>
    public double? ComesTrueBelowC { get; init; }
}
