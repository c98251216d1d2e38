using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>How the devices of a solar plant and what switches them are called in the wiring table.</summary>
internal static class SolarDevices
{
    public const string Pump = "collector pump";
    public const string ReleasePump = "pump of the heat release";
    public const string Fan = "fan of the heat release";
    public const string Controller = "solar controller with sensors at collector, tank's bottom and tank's top";
    public const string Thermostat = "thermostat of the heat release";
    private const string ReleaseSwitch = Thermostat + " and that of its tank, in line";
    public const string Changeover = "changeover relay: by day the temperature relay, by night the light sensor";

    public static string DriveStops(bool cutCoils) => (cutCoils
        ? "a limit switch at each end in the coil of that direction, with cores back to the box"
        : "a limit switch at each end in the motor's own circuit, a diode across each to let it come back")
        + "; both directions can never be on together";

    public static string Release(bool gathers) => gathers ? ReleaseSwitch + GatheringWords.OrByDay : ReleaseSwitch;

    public static string FanSwitch(bool relayed, bool gathers) => relayed ? Release(gathers) + ", through a relay" : Release(gathers);

    public static string Protection(bool antifreeze) => antifreeze ? "pump of the exchanger" : "drain valves";

    public static string ProtectionSwitch(bool antifreeze, bool relayed) => (antifreeze, relayed) switch
    {
        (true, false) => Controller,
        (true, true) => Controller + ", through a relay",
        (false, false) => Changeover,
        _ => Changeover + ", through a contactor",
    };

    public static string ProtectionPart(bool antifreeze, bool powered) =>
        powered ? Protection(antifreeze) : antifreeze ? "exchanger" : "freeze protection";

    public static string ReleasePart(bool hasFan) => hasFan ? Fan : "heat release";

    public static string Drive(int frame, int frames) =>
        frames == 1 ? "drive of the frame" : Written.Sentence($"drive of frame {frame}");

    public static string DriveSwitch(bool twoPosition, bool byDelay) =>
        (twoPosition ? byDelay ? "delay relay" : "timer" : "sun clock") + " and light sensor through the reversing interlock";
}
