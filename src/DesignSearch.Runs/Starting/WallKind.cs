namespace DesignSearch.Runs.Starting;

/// <summary>
/// Solid walls a builder knows by name: brick 24 cm, hollow block 20 cm, stone 40 cm, planks 5 cm, brick behind 12 cm of insulation (common practice, no source).
/// </summary>
/// <param name="Word">What is typed.</param>
/// <param name="UWPerM2K">Heat loss, films included [W/(m²K)].</param>
/// <param name="CapacityKjPerM2K">Heat capacity [kJ/(m²K)].</param>
internal sealed record WallKind(string Word, double UWPerM2K, double CapacityKjPerM2K)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<WallKind> All { get; } =
        [new("brick", 2.1, 390), new("block", 2.6, 200), new("stone", 2.7, 830), new("timber", 1.8, 40), new("insulated", 0.25, 390)];

    /// <summary>Their words.</summary>
    public static string[] Words => [.. All.Select(k => k.Word)];
}
