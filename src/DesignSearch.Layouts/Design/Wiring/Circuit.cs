using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>One device that draws current, switches it or senses, with the cable from its box.</summary>
/// <param name="Device">The device.</param>
/// <param name="Volts">Its voltage [V]; 0 for a sensor that has none.</param>
/// <param name="Watts">Power while it runs [W].</param>
/// <param name="CableM">Cable from the box to it, one way [m]; 0 for what sits in the box or brings its own lead.</param>
/// <param name="SwitchedBy">What switches it.</param>
/// <param name="Stops">Limit switches and interlock, or what a control does; empty where there is nothing to say.</param>
public sealed record Circuit(string Device, double Volts, double Watts, double CableM, string SwitchedBy, string Stops)
{
    /// <summary>Current while it runs [A].</summary>
    public double RunningA => Volts > 0 ? Watts / Volts : 0;

    /// <summary>Current while it starts [A], never below the running one.</summary>
    public double StartA { get; init; } = Volts > 0 ? Watts / Volts : 0;

    /// <summary>True where it brings its own lead into the box.</summary>
    public bool BringsLead { get; init; }

    /// <summary>True where its cable goes to the device that it stops, and not back to the box.</summary>
    public bool EndsAtDevice { get; init; }

    /// <summary>True where its price holds a licensed person's joining already.</summary>
    public bool IsJoinedInPrice { get; init; }

    /// <summary>Its cable; null for what has none, or where the catalogue has none that serves.</summary>
    public Cable? Cable { get; init; }

    /// <summary>Conductors that its cable must have.</summary>
    public int Cores { get; init; } = 2;

    /// <summary>How many alike there are, each with a cable of its own; the power is that of all.</summary>
    public int Count { get; init; } = 1;

    /// <summary>True for what controls, behind one fuse with the other controls.</summary>
    public bool IsControl { get; init; }

    /// <summary>What a control is bought for; null for a device.</summary>
    public Purpose? Purpose { get; init; }

    /// <summary>True for a motor that an interlock turns both ways.</summary>
    public bool Reverses { get; init; }

    /// <summary>True for a mains device that wants a breaker for itself.</summary>
    public bool WantsOwnBreaker { get; init; }

    /// <summary>Breaker before a mains device; null on low voltage, or where none fits.</summary>
    public SmallPart? Breaker { get; init; }

    /// <summary>Its rating [A]; 0 without.</summary>
    public double BreakerA => Breaker?.RatedA ?? 0;

    /// <summary>Hours of a day that it runs at most; null for as long as <see cref="Runs"/> says [h].</summary>
    public double? HoursADay { get; init; }

    /// <summary>When it may run, at most: what a battery must be ready for.</summary>
    public RunTime Runs { get; init; }

    // A pump's motor may draw some three times its running current while it starts (common practice, no source).
    private const double PumpStart = 3;

    /// <summary>A pump, which draws more while it starts.</summary>
    /// <inheritdoc cref="Circuit"/>
    public static Circuit OfPump(string device, double volts, double watts, double cableM, string switchedBy) =>
        new(device, volts, watts, cableM, switchedBy, "") { StartA = PumpStart * watts / volts };
}
