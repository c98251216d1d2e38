using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>Rules of a supply without mains.</summary>
public static class OffGridRules
{
    /// <summary>Nothing that needs mains.</summary>
    public static CheckRule NoMains { get; } = new("no-mains", "nothing that needs mains", "The site's own word: no_mains");

    /// <summary>The battery outlasts the darkest run.</summary>
    public static CheckRule DarkestRun { get; } = new(
        "darkest-run",
        "battery outlasts the darkest run of the winters",
        "Hour by hour through the design winters, every device counted as long as it may run; capacity in the cold by two published sizing "
        + "sheets for lead, from memory for lithium: docs/model.md, \"Panel and battery\"");

    /// <summary>The sun fills it again.</summary>
    public static CheckRule Refill { get; } = new(
        "sun-refill", "sun of the darkest thirty days against what is drawn", "1.1 times: from memory of IEEE 1562, own choice");

    /// <summary>Cold that the battery bears.</summary>
    public static CheckRule Cold { get; } = new(
        "battery-cold",
        "battery in the cold",
        "The catalogue's figures; acid freezes by its charge: -9 °C at 40 %, -65 °C full (published table)");

    /// <summary>Current with which it may be charged.</summary>
    public static CheckRule Charge { get; } = new("battery-charge", "charging current that the battery bears", "The catalogue's figures");

    /// <summary>All of them, in the order in which a search counts them.</summary>
    public static IReadOnlyList<CheckRule> All { get; } = [NoMains, DarkestRun, Refill, Cold, Charge];
}
