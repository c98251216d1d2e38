using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Barrels;

namespace DesignSearch.Layouts.Systems.Barrels;

/// <summary>What can be chosen of water barrels.</summary>
public static class BarrelChoices
{
    /// <summary>Water barrels.</summary>
    public static PartChoice<Barrel> Barrel { get; } = new("barrel", "water barrels", Parts.Barrels.Barrel.Definition) { NamesTheLayout = true };

    /// <summary>How many of them.</summary>
    public static NumberChoice Count { get; } =
        new("barrel_count", "number of barrels", "pieces", 1, 40) { Whole = true, Standard = 4, Tried = [2, 4, 6], Under = Barrel, CountsParts = true };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [Barrel, Count];
}
