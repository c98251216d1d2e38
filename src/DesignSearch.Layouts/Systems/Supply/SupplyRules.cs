using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Systems.Supply.OffGrid;

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
        "cable-fuse",
        "fuse between load and cable",
        "1.25 times the running current (common practice, no source), the start within the times of IEC 60127-2 sheet 3; the cable by "
        + "IEC 60364-4-43, 433.1; the local code decides");

    /// <summary>A dead short at the end of the mains cable.</summary>
    public static CheckRule LoopImpedance { get; } = new(
        "loop-impedance",
        "breaker trips at once on a dead short",
        "IEC 60364-4-41 with 0.95 of the voltage; curves of IEC 60898; copper at 70 °C after IEC 60228; the licensed person measures");

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
        CableDrop, CableFuse, SupplyPower, StartCurrent, StartDrop, MainsCurrent, VoltagesApart, LoopImpedance, .. OffGridRules.All,
    ];
}
