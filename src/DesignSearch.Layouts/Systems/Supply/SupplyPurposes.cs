using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>What the parts of a supply are for, and where they go.</summary>
internal static class SupplyPurposes
{
    private const string System = "electrics";

    public static Purpose MainsConduit { get; } =
        new(System, "Protects the mains cable in the ground.", "from the dwelling to the greenhouse");

    public static Purpose ResidualCurrentDevice { get; } =
        new(System, "Cuts the mains on a small fault current; in a wet place it is what saves a life.", "in the mains box");

    public static Purpose Breaker { get; } = new(System, "Protects the mains cable; never above the cable's rating.", "in the mains box");

    public static Purpose MainsBox { get; } =
        new(System, "Keeps water off the mains, apart from the low voltage.", "inside by the door, above splashes");

    public static Purpose MainsBoxGland { get; } = new(System, "Seals each cable into its box.", "under the mains box");

    public static Purpose LowConduit { get; } =
        new(System, "Protects the low-voltage cables in the ground.", "from the dwelling to the greenhouse, apart from any mains");

    public static Purpose ControlBox { get; } =
        new(System, "Keeps controls dry, apart from any mains.", "inside by the door, above splashes");

    public static Purpose ControlBoxGland { get; } = new(System, "Seals each cable into its box.", "under the control box");

    public static Purpose Licensed { get; } = new(
        System,
        "Joins the mains and each device on them, tests all and certifies it; hours estimated, so ask for an offer.",
        "at the dwelling's board and in the greenhouse");

    public static Purpose LicensedBesideUnit { get; } = new(
        System,
        "Joins the mains, tests all and certifies it; hours estimated, so ask for an offer. The heat pump's own joining is in its price.",
        "at the dwelling's board and in the greenhouse");

    public static Purpose Fuse { get; } =
        new(System, "Protects the cables; never above the thinnest cable's rating.", "right behind the supply");

    public static Purpose MainsCable(bool hasMains) => new(
        System,
        "Brings the mains, 5 % for cuts included; a licensed person lays and joins it.",
        hasMains ? "inside the greenhouse" : "in a duct from the dwelling to the greenhouse");

    public static Purpose MainsBranch(string device) => new(
        System,
        $"Joins the {device} to the mains box, 5 % for cuts included; licensed work.",
        "inside the greenhouse, apart from the low voltage");

    public static Purpose Supply(bool atHouse) => new(
        System,
        "Makes the safe low voltage for pumps, valves and drive; strong enough while a drive starts.",
        atHouse ? "in a box of its own beside the mains box" : "in the dwelling, beside the fuse board");

    public static Purpose Feeder(bool atHouse) => new(
        System,
        "Brings the low voltage without losing more than a twentieth of it, 5 % for cuts included.",
        atHouse ? "inside the greenhouse" : "from the dwelling to the greenhouse, in a duct apart from any mains");

    public static Purpose LowBranch(string device, double volts) => new(
        System,
        Written.Sentence($"Joins the {device} to the control box at {volts:0} V; 5 % for cuts included."),
        "from the control box to the device");
}
