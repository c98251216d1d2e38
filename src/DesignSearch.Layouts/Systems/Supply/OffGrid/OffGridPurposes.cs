using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>What the parts of a supply without mains are for, and where they go.</summary>
internal static class OffGridPurposes
{
    private const string System = "electrics";

    public static Purpose Panel { get; } = new(
        System,
        "Charges the battery; enough for the darkest month.",
        "beside or behind the greenhouse, facing the equator, clear of any shadow");

    public static Purpose Bracket { get; } = new(
        System, "Holds a panel steeply and against the storm; in the ground or on a wall that bears it.", "under each panel");

    public static Purpose PanelSwitch { get; } = new(
        System, "Cuts the panels off before anything behind them is touched; one for direct current.", "beside the charge controller");

    public static Purpose PanelCable { get; } = new(
        System, "Brings the panels' current, 5 % for cuts included.", "from the panels to the charge controller");

    public static Purpose Controller { get; } = new(
        System,
        "Charges the battery as far as it bears, and no further.",
        "in the supply's box beside the battery, apart from any with acid");

    public static Purpose Battery { get; } = new(
        System,
        "Carries all devices through the darkest run of the winter.",
        "in its box in the greenhouse, off the floor, out of the sun");

    public static Purpose BatteryBox { get; } = new(
        System,
        "Keeps drips, tools and children off the battery and leads its gas outside.",
        "on a shelf that bears it; its hose through the wall");

    public static Purpose BatteryCable { get; } = new(
        System,
        "Joins battery, fuse, charge controller and guard, and links batteries; 5 % for cuts included.",
        "at the battery, as short as it goes");

    public static Purpose Guard { get; } = new(
        System,
        "Cuts the devices off before the battery is too empty.",
        "in the supply's box beside the battery, behind the battery's fuse");

    public static Purpose Gland { get; } = new(System, "Seals each cable into its box.", "under the supply's box");

    public static Purpose Fuse(double amperes) => new(
        System,
        Written.Sentence($"{amperes:0} A for direct current: breaks a dead short across the battery, which a fuse of glass does not."),
        "on the battery's own terminal or a hand's breadth from it, in the lead that is not joined to the others");
}
