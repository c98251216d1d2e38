using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>The devices of a solar plant that draw current.</summary>
internal static class SolarCircuits
{
    // From the box to what stands beside the tank (common practice, no source).
    public const double NearM = 3;

    // Out and back between stops that lie at most half a turn apart.
    private const double WholeTurnDeg = 360;
    private const double SecondsPerHour = 3600;

    public static IReadOnlyList<Circuit> Of(SolarLoop solar)
    {
        var circuits = new List<Circuit>(5 + solar.Frames);
        Add(circuits, SolarDevices.Pump, solar.Pump.Volts, solar.Pump.Watts, SolarDevices.Controller, true, RunTime.Daylight);
        if (solar.ReleasePump is { } pump)
            Add(circuits, SolarDevices.ReleasePump, pump.Volts, pump.Watts, SolarDevices.Release(solar.Gathers), true);
        var (release, protection) = (solar.Release, solar.Protection);
        Add(circuits, SolarDevices.Fan, release.Volts, release.FanWatts * solar.ReleasePieces, SolarDevices.FanSwitch(solar.IsRelayed, solar.Gathers));
        var relayed = solar.StaysFull ? protection.Volts != solar.ControllerVolts : protection.Volts >= SupplyPlan.MainsVolts;
        var by = SolarDevices.ProtectionSwitch(solar.StaysFull, relayed);
        Add(circuits, SolarDevices.Protection(solar.StaysFull), protection.Volts, protection.Watts, by, false, RunTime.Daylight);
        if (solar.Drive is { } drive)
            AddDrives(circuits, solar, drive);
        return circuits;
    }

    private static void AddDrives(List<Circuit> circuits, SolarLoop solar, Drive drive)
    {
        if (drive.Volts <= 0 || drive.Watts <= 0)
            return;
        var by = SolarDevices.DriveSwitch(solar.Mount.Turning == TurningKind.TwoPosition, solar.HasDelayRelay);

        // A bolt with a spring is wired beside the motor and drawn back while that runs.
        var watts = drive.Watts + (solar.Stand.SpringBolt?.Watts ?? 0);
        for (var frame = 1; frame <= solar.Frames; frame++)
        {
            var device = SolarDevices.Drive(frame, solar.Frames);
            circuits.Add(new(device, drive.Volts, watts, solar.PipeRunM + NearM, by, SolarDevices.DriveStops(solar.StopsCutCoils))
            {
                StartA = SolarContacts.StartA(drive) + ((watts - drive.Watts) / drive.Volts),
                Reverses = true,
                HoursADay = WholeTurnDeg / drive.SpeedDegPerS / SecondsPerHour,
            });
        }
    }

    // What has no voltage or draws nothing is no circuit: a release without a fan, a drain-back without valves.
    private static void Add(
        List<Circuit> circuits, string device, double volts, double watts, string by, bool isPump = false, RunTime runs = RunTime.Always)
    {
        if (volts <= 0 || watts <= 0)
            return;
        var circuit = isPump ? Circuit.OfPump(device, volts, watts, NearM, by) : new(device, volts, watts, NearM, by, "");
        circuits.Add(circuit with { Runs = runs });
    }
}
