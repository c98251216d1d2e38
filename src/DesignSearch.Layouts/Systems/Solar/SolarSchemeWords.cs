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
    public const string CollectorSensor = "sensor of the collector";
    public const string TankSensors = "sensors of the tank, bottom and top";
    public const string TankCutOut = "cut-out in the tank's top";
    public const string OfLoop = " of the loop";
    public const string OfTank = " of the tank";
    public const string FreeOutlet = "free outlet to fill by";
    public const string MakeUp = "make-up valve";
    public const string DrainPoint = "drain point";
    public const string Strainer = "strainer of the collector pump";
    public const string ReleaseStrainer = "strainer of the heat release";
    public const string Throttle = "regulating valve";
    public const string FlowIndicator = "flow indicator";
    public const string ExchangerRelay = "relay of the exchanger's pump";
    public const string ValveSensor = "sensor of the drain valves";
    public const string ValveRelay = "temperature relay of the drain valves";
    public const string ValveLight = "light sensor of the drain valves";
    public const string ValveChangeover = "changeover relay of the drain valves";
    public const string ValveContactor = "contactor of the drain valves";
    public const string TankThermostat = "tank thermostat of the heat release";
    public const string TankThermostatSensor = "sensor of the release at the tank's top";
    public const string Relay = "relay of the heat release";
}
