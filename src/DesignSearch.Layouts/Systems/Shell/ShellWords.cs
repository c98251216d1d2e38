using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Shell;

/// <summary>How the shape of a house is said.</summary>
internal static class ShellWords
{
    public const string RoomDoubt = "the room behind the wall";
    public const string RoomWhy = "Own choice: a dwelling is let cool at night, or left for a week.";

    public static string RoomWhat(double celsius) => Written.Sentence($"the room behind the wall at {celsius:0} °C");

    private static Caution SnowFromAbove { get; } = new("Snow from the roof above", """
        Snow slides or drifts from a higher roof onto a lean-to: several times what lies elsewhere, and ice with it. Know what it bears by
        EN 1991-1-3 or the local rule, have snow guards set above it, and stay out from under a loaded roof.
        """.ReplaceLineEndings(" "));

    private static Caution OpeningsIntoIt { get; } = new("The dwelling behind", """
        No flue, gas vent or air inlet of the dwelling may end in a lean-to, and no window that is a way out in a fire may be closed by it:
        ask the chimney sweep or a licensed person before you build. Fix it to what bears, not to cladding or render, and keep the wall dry
        where it joins.
        """.ReplaceLineEndings(" "))
    { Harm = Harm.Kills };

    private static Caution RoomFails { get; } = new("Heat from the dwelling", """
        Part of the warmth is the dwelling's, on its bill. When its heating fails or is turned down the greenhouse loses that too; what it
        would be then is among what is in doubt.
        """.ReplaceLineEndings(" "))
    { Harm = Harm.Spoils };

    private static Caution Hoop { get; } = new("Hoop in snow and wind", """
        A hoop of thin tube folds under wet snow, and lifts in a gale where it is not held down. Brush snow off early and on both sides,
        from outside; have props under the top ready; hold every foot by an anchor made for the uplift. What it bears is the maker's word
        or the local code's. Do not go in under a loaded hoop.
        """.ReplaceLineEndings(" "));

    private static Caution Pit { get; } = new("Floor below the ground", """
        A wall that holds earth is built by the local code; a trench deeper than your knee is shored, and pipes and cables are looked for
        before you dig. Gas heavier than air gathers in a pit: no bottled gas, no flame, no heap that rots inside, and air it before you go
        down. Rain and meltwater must have a way out, and all current stays above where water could stand.
        """.ReplaceLineEndings(" "))
    { Harm = Harm.Kills };

    public static IEnumerable<Caution> Cautions(Greenhouse house)
    {
        if (house.BackWall is { } wall)
        {
            yield return SnowFromAbove;
            if (wall.Behind != BehindWall.Outside)
                yield return OpeningsIntoIt;
            if (wall.Behind == BehindWall.HeatedRoom)
                yield return RoomFails;
        }

        if (house.Shape == HouseShape.Tunnel)
            yield return Hoop;
        if (house.FloorBelowM > 0)
            yield return Pit;
    }

    public static IEnumerable<Upkeep> Upkeep(Greenhouse house)
    {
        if (house.FloorBelowM > 0)
            yield return new("See that drain and sump of the sunken floor are clear.", "every autumn", 0.5);
    }
}
