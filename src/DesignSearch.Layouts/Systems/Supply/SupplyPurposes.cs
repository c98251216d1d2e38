using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>What the parts of a supply are for, and where they go.</summary>
internal static class SupplyPurposes
{
    private const string System = "electrics";

    public static Purpose MainsConduit { get; } =
        new(System, "Protects the mains cable in the ground.", "from the dwelling to the greenhouse");

    public static Purpose WarningTape { get; } =
        new(System, "Warns who digs before the spade meets the cable.", "over the duct, two hands above it");

    public static Purpose Isolator { get; } = new(System, "Cuts the whole greenhouse off with one hand.", "in the mains box");

    public static Purpose EarthRod { get; } = new(
        System,
        Written.Sentence(
            $"Own earth, where the licensed person chooses it over the dwelling's;",
            $"under {EarthFault.LargestRodOhm(ResidualA):0} Ω, measured."),
        "in the ground beside the mains box");

    public static Purpose SurgeProtection { get; } = new(
        System,
        "Leads the surge of a near strike to earth; whether it is wanted, and which, the licensed person says.",
        "in the mains box, where the long cable comes in");

    public static Purpose Terminals { get; } = new(System, "A terminal for each core, numbered at both ends.", "in the control box");

    /// <summary>Residual current at which the device trips [A].</summary>
    public const double ResidualA = 0.03;
    private const double LargestSmallA = 6.3;

    public static Purpose ResidualCurrentDevice(bool hasMains) =>
        new(System, "Cuts the mains on a small fault current; in a wet place it is what saves a life.", Origin(hasMains));

    public static Purpose Breaker(bool hasMains) => new(
        System,
        "Protects the mains cable over its whole length, so it stands where that begins; never above the cable's rating.",
        Origin(hasMains));

    public static Purpose BranchBreaker(string device) =>
        new(System, $"A circuit of its own for the {device}; licensed work.", "in the mains box");

    public static Purpose Socket(string device) => new(System, $"The {device} is plugged in here; licensed work.", "beside the mains box");

    public static Purpose SupplyBox(double volts, SupplySpot spot) => new(
        System,
        Written.Sentence($"Keeps water and hands off the supply of {volts:0} V; marked with its voltage."),
        WhereSupply(spot));

    public static Purpose MainFuse(double volts, double amperes) => new(
        System,
        $"{Size(amperes)}: {Written.Sentence($"protects the cable of {volts:0} V to the control box.")}",
        "right behind the supply");

    public static Purpose Fuse(string device, double amperes) => new(
        System,
        $"{Size(amperes)} for the {device} alone: a short there leaves the rest alive.",
        "in the control box");

    public static Purpose Signal(Circuit signal) => new(
        System,
        $"Joins to what it serves: {signal.Device}; 5 % for cuts included.",
        signal.StartA > 0 ? "between motor and switch" : "to the control box, apart from any mains");

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

    public static Purpose MainsCable(bool hasMains) => new(
        System,
        "Brings the mains, 5 % for cuts included; a licensed person lays and joins it.",
        hasMains ? "inside the greenhouse" : "in a duct from the dwelling to the greenhouse");

    public static Purpose MainsBranch(string device) => new(
        System,
        $"Joins the {device} to the mains box, 5 % for cuts included; licensed work.",
        "inside the greenhouse, apart from the low voltage");

    public static Purpose Supply(double volts, SupplySpot spot) => new(
        System,
        Written.Sentence($"Makes the safe {volts:0} V for pumps, valves and drive; strong enough while a drive starts."),
        WhereSupply(spot));

    public static Purpose Feeder(SupplySpot spot) => new(
        System,
        "Brings the low voltage without losing more than a twentieth of it, 5 % for cuts included.",
        spot != SupplySpot.Dwelling ? "inside the greenhouse" : "from the dwelling to the greenhouse, in a duct apart from any mains");

    public static Purpose LowBranch(string device, double volts) => new(
        System,
        Written.Sentence($"Joins the {device} to the control box at {volts:0} V; 5 % for cuts included."),
        "from the control box to the device");

    // Small ones after IEC 60127, larger ones after IEC 60269.
    private static string Size(double amperes) => (amperes <= LargestSmallA ? "Time-lag, " : "Slow, ") + Mark(amperes);

    /// <summary>What is printed on a fuse.</summary>
    /// <param name="amperes">Its size [A].</param>
    public static string Mark(double amperes) =>
        Written.Sentence(amperes <= LargestSmallA ? $"T {amperes:0.##} A" : (FormattableString)$"gG {amperes:0.##} A");

    private static string Origin(bool hasMains) => hasMains
        ? "where the mains already is, at the beginning of the new cable"
        : "in the dwelling's board, at the beginning of the cable";

    private static string WhereSupply(SupplySpot spot) => spot switch
    {
        SupplySpot.Dwelling => "in the dwelling, beside the fuse board",
        SupplySpot.MainsBox => "in a box of its own beside the mains box",
        _ => "in a box of its own beside the battery",
    };
}
