using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>What turns motors both ways: an interlock and a hand switch for each, ways to stop at either end and to come back.</summary>
public static class Reversing
{
    // A diode across a coil blocks ten times the supply (relay makers' handbooks); a motor is a coil when it is cut off.
    private const double BlocksTimes = 10;

    // From a motor to the switches at its stops (common practice, no source).
    private const double ToStopsM = 2;

    /// <summary>Current of the coil by which a motor is started [A]; 0 where the catalogue has no interlock.</summary>
    /// <param name="shelf">Where parts are found.</param>
    /// <param name="startA">The motor's current while it starts [A].</param>
    public static double CoilA(PartShelf shelf, double startA)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        var interlock = shelf.Bearing(SmallPartRole.ReversingInterlock, [Start(startA)], SupplyPlan.ControlVolts)
            ?? shelf.Cheapest(SmallPartRole.ReversingInterlock, SupplyPlan.ControlVolts);
        return (interlock?.Watts ?? 0) / SupplyPlan.ControlVolts;
    }

    /// <summary>Adds interlocks and hand switches.</summary>
    /// <param name="needs">The list.</param>
    /// <param name="motors">How many motors.</param>
    /// <param name="startA">What each draws while it starts [A].</param>
    /// <param name="interlock">What an interlock is for.</param>
    /// <param name="hand">What a hand switch is for.</param>
    public static void Add(Needs needs, int motors, double startA, Purpose interlock, Purpose hand)
    {
        ArgumentNullException.ThrowIfNull(needs);
        needs.Small(SmallPartRole.ReversingInterlock, motors, interlock, [Start(startA)], SupplyPlan.ControlVolts);
        needs.Small(SmallPartRole.HandSwitch, motors, hand, [Duty.Current(PlantState.Running, CoilA(needs.Shelf, startA))]);
    }

    /// <summary>
    /// Whether end switches stand in the coils of the interlock, each with a cable back to the box, because none bears the motor with a
    /// diode across it that lets the motor come back.
    /// </summary>
    /// <param name="shelf">Where parts are found.</param>
    /// <param name="volts">The motor's voltage [V].</param>
    /// <param name="startA">The motor's current while it starts [A].</param>
    public static bool StopsCutCoils(PartShelf shelf, double volts, double startA)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return shelf.Bearing(SmallPartRole.LimitSwitch, [Start(startA)]) is null
            || shelf.Bearing(SmallPartRole.Diode, [Start(startA), Blocks(volts)]) is null;
    }

    /// <summary>Adds end switches, with diodes across them or cables of their own.</summary>
    /// <param name="needs">The list.</param>
    /// <param name="stops">How many end switches.</param>
    /// <param name="volts">The motor's voltage [V].</param>
    /// <param name="startA">What a motor draws while it starts [A].</param>
    /// <param name="boxM">From the box to the stops, one way [m].</param>
    /// <param name="stop">What an end switch is for.</param>
    /// <param name="diode">What a diode is for.</param>
    public static void AddStops(Needs needs, int stops, double volts, double startA, double boxM, Purpose stop, Purpose diode)
    {
        ArgumentNullException.ThrowIfNull(needs);
        if (StopsCutCoils(needs.Shelf, volts, startA))
        {
            var coil = Duty.Current(PlantState.Running, CoilA(needs.Shelf, startA));
            needs.Small(SmallPartRole.LimitSwitch, stops, stop, [coil], 0, new Lead(boxM, 2));
            return;
        }

        needs.Small(SmallPartRole.LimitSwitch, stops, stop, [Start(startA)], 0, new Lead(ToStopsM, 2) { StartA = startA, EndsAtDevice = true });
        needs.Small(SmallPartRole.Diode, stops, diode, [Start(startA), Blocks(volts)]);
    }

    private static Duty Start(double startA) => Duty.Current(PlantState.Running, startA);

    private static Duty Blocks(double volts) => Duty.Voltage(PlantState.Running, BlocksTimes * volts);
}
