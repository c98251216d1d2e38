using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Barrels;

/// <summary>How water barrels are said.</summary>
internal static class BarrelWords
{
    public const string Store = "barrel";

    private const string System = "barrels";
    private const double Freezes = 0;

    public static Purpose Barrel { get; } = new(
        System,
        "Takes up the day's warmth and gives it back at night without any control.",
        "where the low sun strikes them, away from the door");

    public static Purpose Lid { get; } = new(System, "Children and animals drown in open water.", "on every barrel");

    public static Purpose Treatment { get; } = new(System, "Against algae.", "in the barrels");

    public static Caution Ice(double filled, double mayFreeze) => new("Full barrels in a house given up", Written.Sentence($"""
        Freezing water grows by a tenth and bursts a barrel that has no room for it. They are filled to {100 * filled:0} %: before the house
        is left to freeze, let each down below {100 * mayFreeze:0} %, on a mild day, and lead the water out of the house.
        """).ReplaceLineEndings(" ")) { ComesTrueBelowC = Freezes };

    public static IEnumerable<Upkeep> Upkeep { get; } =
    [
        new("Top the barrels up, treat the water and look at the lids.", "every autumn", 1),
    ];

    public static IEnumerable<CommissioningStep> Steps(double filled, PaperGround ground) =>
    [
        .. ground.Try(
            Barrel, "fill one, and look at it again after a night",
            Written.Sentence($"upright on firm ground, {100 * filled:0} % full, no drop beside it")),
        .. ground.Try(Lid, "lift each by its edge, as a child would", "it does not come off"),
    ];

    public static string Title(int count, double litres) => Written.Sentence($"{Written.Count(count, "barrel")} ({litres:0} L)");
}
