namespace DesignSearch.Layouts.Design.Brief;

/// <summary>One winter, or several of a kind, to be judged on.</summary>
/// <param name="Name">Name for display.</param>
/// <param name="Sort">What it is.</param>
/// <param name="Weight">Share in the weighted means; several of a kind divide it.</param>
public sealed record WinterWish(string Name, WinterSort Sort, double Weight)
{
    /// <summary>How many winters are drawn.</summary>
    public int Count { get; init; } = 1;

    /// <summary>A hard winter: once in how many years its coldest night comes.</summary>
    public double ReturnYears { get; init; } = 10;

    /// <summary>A hard winter: the builder's own lowest temperature [°C]; takes the place of the return level.</summary>
    public double? LowestC { get; init; }

    /// <summary>A hard winter: length of the power cut on its coldest night [h].</summary>
    public int PowerCutHours { get; init; }
}
