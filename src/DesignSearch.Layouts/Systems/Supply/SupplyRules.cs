using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Rules of a supply.</summary>
public static class SupplyRules
{
    private const string Copper = "Resistance after IEC 60228; ";

    /// <summary>Voltage lost while everything runs.</summary>
    public static CheckRule CableDrop { get; } = new(
        "cable-drop", "voltage lost in the low-voltage cables", Copper + "5 % is common practice, no source");

    /// <summary>Fuse between load and cable.</summary>
    public static CheckRule CableFuse { get; } = new(
        "cable-fuse", "fuse between load and cable", "Load ≤ fuse ≤ cable rating, the local code decides");

    /// <summary>Power of a low-voltage supply.</summary>
    public static CheckRule SupplyPower { get; } = new("supply-power", "power of the low-voltage supply", "Sum of the catalogue's figures");

    /// <summary>Its current while a motor starts.</summary>
    public static CheckRule StartCurrent { get; } = new(
        "start-current",
        "current while a motor starts",
        "The catalogue's starting currents; pumps three times their running current, common practice, no source");

    /// <summary>Voltage lost while a motor starts.</summary>
    public static CheckRule StartDrop { get; } = new(
        "start-drop", "voltage lost while a motor starts", Copper + "20 % is common practice, no source");

    /// <summary>What the dwelling can spare.</summary>
    public static CheckRule MainsCurrent { get; } = new(
        "mains-current", "current that the dwelling can spare", "Sum of the catalogue's figures at 230 V; the builder's own limit");

    /// <summary>Low voltage apart from the mains.</summary>
    public static CheckRule VoltagesApart { get; } = new(
        "voltages-apart",
        "low voltage kept low and apart",
        "Extra-low voltage after the IEC vocabulary, 120 V direct current; local rules for wet places are stricter");

    /// <summary>All of them, in the order in which a search counts them.</summary>
    public static IReadOnlyList<CheckRule> All { get; } =
    [
        CableDrop, CableFuse, SupplyPower, StartCurrent, StartDrop, MainsCurrent, VoltagesApart,
    ];
}
