using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>How current comes to the greenhouse, and to each device in it.</summary>
public sealed record SupplyPlan
{
    /// <summary>Voltage of the mains [V].</summary>
    public const double MainsVolts = 230;

    /// <summary>Voltage of controls that are not on the mains [V].</summary>
    public const double ControlVolts = 24;

    /// <summary>Load on the mains in the greenhouse [W]; 0 where only low voltage is brought there.</summary>
    public required double MainsW { get; init; }

    /// <summary>Mains devices; the supplies of low voltage among them where they stand in the greenhouse.</summary>
    public required IReadOnlyList<Circuit> MainsCircuits { get; init; }

    /// <summary>Cable to the mains box; null without mains, or where the catalogue has none that serves.</summary>
    public required Cable? MainsCable { get; init; }

    /// <summary>Its length one way [m].</summary>
    public required double MainsCableM { get; init; }

    /// <summary>
    /// Circuit breaker where the mains cable begins; null without mains, or where the catalogue has none between load and cable.
    /// </summary>
    public required SmallPart? Breaker { get; init; }

    /// <summary>The worst way of a dead short on the mains; null without mains, or where breaker or cable lack.</summary>
    public FaultLoop? Loop { get; init; }

    /// <summary>Sensors without a voltage of their own, with their cables.</summary>
    public IReadOnlyList<Circuit> Signals { get; init; } = [];

    /// <summary>Panel and battery; null where mains give the current, or where the catalogue lacks a part for them.</summary>
    public BatteryPlan? Battery { get; init; }

    /// <summary>Devices that need mains where there are none; empty in a layout that can be built.</summary>
    public IReadOnlyList<Circuit> Unfed { get; init; } = [];

    /// <summary>Extra-low voltages, the lowest first; empty where nothing needs any.</summary>
    public required IReadOnlyList<LowLine> Lines { get; init; }

    /// <summary>Current that the dwelling gives while everything runs [A]: mains devices, and low voltage through its supplies.</summary>
    public required double DwellingA { get; init; }

    /// <summary>The same while the hungriest device starts.</summary>
    public required double DwellingStartA { get; init; }

    /// <summary>Current in the mains cable [A].</summary>
    public double MainsA => MainsW / MainsVolts;

    /// <summary>The same while the hungriest device starts [A].</summary>
    public double MainsStartA => MainsA + MainsCircuits.Select(c => c.StartA - c.RunningA).DefaultIfEmpty(0).Max();

    /// <summary>The highest extra-low voltage, that of a panel in the cold included [V]; 0 without.</summary>
    public double LowVolts => Math.Max(Lines.Select(l => l.Volts).DefaultIfEmpty(0).Max(), Battery?.ColdOpenV ?? 0);
}
