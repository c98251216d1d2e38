using DesignSearch.Parts.Electrics;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>One device that draws current, with the cable from its box.</summary>
/// <param name="Device">The device.</param>
/// <param name="Volts">Its voltage [V].</param>
/// <param name="Watts">Power while it runs [W].</param>
/// <param name="CableM">Cable from the box to it, one way [m]; 0 for what sits in the box or brings its own lead.</param>
/// <param name="SwitchedBy">What switches it.</param>
/// <param name="Stops">Limit switches and interlock; empty where there are none.</param>
public sealed record Circuit(string Device, double Volts, double Watts, double CableM, string SwitchedBy, string Stops)
{
    /// <summary>Current while it runs [A].</summary>
    public double RunningA => Watts / Volts;

    /// <summary>Current while it starts [A], never below the running one.</summary>
    public double StartA { get; init; } = Watts / Volts;

    /// <summary>True where it brings its own lead into the box.</summary>
    public bool BringsLead { get; init; }

    /// <summary>True where its price holds a licensed person's joining already.</summary>
    public bool IsJoinedInPrice { get; init; }

    /// <summary>Its cable; null for what has none, or where the catalogue has none that serves.</summary>
    public Cable? Cable { get; init; }

    // A pump's motor may draw some three times its running current while it starts (common practice, no source).
    private const double PumpStart = 3;

    /// <summary>A pump, which draws more while it starts.</summary>
    /// <inheritdoc cref="Circuit"/>
    public static Circuit OfPump(string device, double volts, double watts, double cableM, string switchedBy) =>
        new(device, volts, watts, cableM, switchedBy, "") { StartA = PumpStart * watts / volts };
}
