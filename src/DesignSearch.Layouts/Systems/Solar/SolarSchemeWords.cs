namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>How the components of a solar plant are called in its pictures.</summary>
internal static class SolarSchemeWords
{
    public const string Collectors = "collectors";
    public const string AirVent = "air vent";
    public const string Interlock = "reversing interlock of the frame";
    public const string Timer = "timer of the frame";
    public const string DelayRelay = "delay relay of the frame";
    public const string SunClock = "sun clock";
    public const string LightSensor = "light sensor of the frame";
    public const string LimitSwitches = "limit switches";
    public const string Tank = "tank";
    public const string ReliefValve = "relief valve";
    public const string ExpansionVessel = "expansion vessel";
    public const string FillSet = "fill set";
    public const string CheckValve = "check valve";
    public const string BallValves = "ball valves";
    public const string Sensors = "sensor of the tank";
    public const string OutletSensor = "sensor of the collector";
    public const string Relay = "relay of the heat release";
}
