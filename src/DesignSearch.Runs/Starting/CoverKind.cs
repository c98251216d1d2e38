namespace DesignSearch.Runs.Starting;

/// <summary>Covers a builder knows by name, with what their makers usually state (common practice, no source).</summary>
/// <param name="Word">What is typed.</param>
/// <param name="UWPerM2K">Heat loss [W/(m²K)].</param>
/// <param name="Light">Share of the light, dirt and bars taken off.</param>
/// <param name="Layers">Sheets or skins.</param>
internal sealed record CoverKind(string Word, double UWPerM2K, double Light, int Layers)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<CoverKind> All { get; } =
    [
        new("film", 6.5, 0.78, 1), new("glass", 6, 0.80, 1), new("twin-4", 4, 0.74, 2), new("twin-6", 3.6, 0.74, 2), new("twin-10", 3.1, 0.72, 2), new("triple-16", 2.4, 0.66, 3),
    ];

    /// <summary>Their words.</summary>
    public static string[] Words => [.. All.Select(k => k.Word)];
}
