using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>What switches and senses, read from what is bought: so nothing is wired that is not bought, nor bought and not wired.</summary>
public static class Controls
{
    private const int CoresOfProbe = 2;

    // The coils of what reverses a motor are live while it turns: less than an hour a day (own choice).
    private const double TurningH = 1;

    /// <summary>The controls among the needed parts, each with what it draws and its cable.</summary>
    /// <param name="parts">Everything that a layout needs so far.</param>
    /// <param name="circuits">The devices so far; these are added.</param>
    public static void Add(IReadOnlyList<NeededPart> parts, List<Circuit> circuits)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(circuits);
        for (var i = 0; i < parts.Count; i++)
        {
            var (needed, count, part) = (parts[i], (int)parts[i].Quantity, parts[i].Part as SmallPart);
            if (part is null ? needed.Part is not IControlPart : !IsControl(part))
                continue;
            var (volts, each) = part is not null
                ? (Volts(part), part.Watts)
                : needed.Part is IControlPart control ? (control.Volts, control.Watts) : default;
            var watts = count * each;
            circuits.Add(new(needed.Part.Name, volts, watts, needed.Lead.Metres, needed.Purpose.Where, needed.Purpose.Why)
            {
                Cores = Math.Max(CoresOfProbe, needed.Lead.Cores),
                Count = count,
                EndsAtDevice = needed.Lead.EndsAtDevice,
                IsControl = true,
                Purpose = needed.Purpose,
                // A probe comes with a short cable of its own.
                BringsLead = part?.Role == SmallPartRole.TemperatureSensor && needed.Lead.Metres == 0,
                StartA = Math.Max(needed.Lead.StartA, volts > 0 ? watts / volts : 0),
                HoursADay = part?.Role == SmallPartRole.ReversingInterlock ? TurningH : null,
            });
        }
    }

    /// <summary>Whether a part switches or senses: all that draws current for it, and what needs none.</summary>
    /// <param name="part">The part.</param>
    public static bool IsControl(SmallPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Role is not (SmallPartRole.CoverMotor or SmallPartRole.MotorValve) && (part.Watts > 0 || Switches(part.Role));
    }

    private static bool Switches(SmallPartRole role) => role is SmallPartRole.DifferenceController or SmallPartRole.TemperatureSensor
        or SmallPartRole.Thermostat or SmallPartRole.Timer or SmallPartRole.SunClock or SmallPartRole.DelayRelay
        or SmallPartRole.LightSensor
        or SmallPartRole.LimitSwitch or SmallPartRole.Relay or SmallPartRole.ReversingInterlock or SmallPartRole.Contactor
        or SmallPartRole.Diode or SmallPartRole.HandSwitch or SmallPartRole.HighLimit or SmallPartRole.TemperatureRelay
        or SmallPartRole.TankCutOut or SmallPartRole.ChangeoverRelay or SmallPartRole.ProbeThermostat;

    // A contactor's coil is on low voltage; a diode's and a hand switch's voltage is what it blocks or bears, not what it draws at.
    private static double Volts(SmallPart part) => part switch
    {
        { Role: SmallPartRole.Contactor } => SupplyPlan.ControlVolts,
        { Role: SmallPartRole.Diode or SmallPartRole.LimitSwitch or SmallPartRole.HandSwitch or SmallPartRole.TemperatureSensor } => 0,
        // What opens a circuit of low voltage draws nothing itself; on mains its cable is that of a mains device.
        { Role: SmallPartRole.TankCutOut, Volts: < SupplyPlan.MainsVolts } => 0,
        _ => part.Volts,
    };
}
