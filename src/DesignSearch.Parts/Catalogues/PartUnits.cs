namespace DesignSearch.Parts.Catalogues;

/// <summary>The words for units in catalogues and shopping lists.</summary>
public static class PartUnits
{
    private static readonly IReadOnlyList<(string Word, PartUnit Meaning)> Known =
    [
        ("piece", PartUnit.Piece), ("m", PartUnit.Metre), ("m2", PartUnit.SquareMetre), ("m3", PartUnit.CubicMetre),
        ("l", PartUnit.Litre), ("set", PartUnit.Set), ("kg", PartUnit.Kilogram), ("h", PartUnit.Hour),
    ];

    /// <summary>The word for a unit: piece, m, m2, m3, l, set, kg or h.</summary>
    /// <param name="unit">The unit.</param>
    public static string Word(this PartUnit unit) => Known.First(k => k.Meaning == unit).Word;

    /// <summary>True for what comes whole: pieces and sets. All else is measured out.</summary>
    /// <param name="unit">The unit.</param>
    public static bool IsWhole(this PartUnit unit) => unit is PartUnit.Piece or PartUnit.Set;

    /// <summary>True for what is measured out and may be sold by the roll, coil, sheet, canister or bag.</summary>
    /// <param name="unit">The unit.</param>
    internal static bool IsPacked(this PartUnit unit) => !unit.IsWhole() && unit != PartUnit.Hour;

    internal static IReadOnlyList<(string Word, PartUnit Meaning)> Words(IReadOnlyList<PartUnit> units) => [.. Known.Where(k => units.Contains(k.Meaning))];
}
