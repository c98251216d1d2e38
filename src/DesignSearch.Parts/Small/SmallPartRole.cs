namespace DesignSearch.Parts.Small;

/// <summary>The task that a small part serves.</summary>
public enum SmallPartRole
{
    /// <summary>Starts the collector pump by the difference of two temperatures.</summary>
    DifferenceController,

    /// <summary>A sensor for a controller.</summary>
    TemperatureSensor,

    /// <summary>Switches heat release, fan or heater by the air.</summary>
    Thermostat,

    /// <summary>Swings a mount over at an hour of the day.</summary>
    Timer,

    /// <summary>Follows the sun in steps or continuously.</summary>
    SunClock,

    /// <summary>Brings a mount back at dusk.</summary>
    LightSensor,

    /// <summary>Stops a mount at the end of its turn.</summary>
    LimitSwitch,

    /// <summary>Switches small loads.</summary>
    Relay,

    /// <summary>Keeps both directions of a motor from ever being on together.</summary>
    ReversingInterlock,

    /// <summary>Switches a mains load through its coil.</summary>
    Contactor,

    /// <summary>A valve that a motor opens and closes.</summary>
    MotorValve,

    /// <summary>Lets water through one way only.</summary>
    CheckValve,

    /// <summary>Shut by hand: filling and draining.</summary>
    BallValve,

    /// <summary>Lets air or steam out at the highest place.</summary>
    AirVent,

    /// <summary>Fills a closed loop and keeps it apart from drinking water.</summary>
    FillSet,

    /// <summary>Flexible pipe to a collector that turns.</summary>
    HoseLoop,

    /// <summary>Keeps rain out of a shaft or bearing.</summary>
    ShaftSeal,

    /// <summary>Elbows, tees, unions and clips for one collector, tank or release.</summary>
    Fittings,

    /// <summary>Holds pipe and lets it slide.</summary>
    PipeClip,

    /// <summary>Concrete for footings, by the cubic metre.</summary>
    Cement,

    /// <summary>Holds a tank or barrels against tipping.</summary>
    Strap,

    /// <summary>Keeps children out of a tank or barrel.</summary>
    Lid,

    /// <summary>An enclosure for controls.</summary>
    ControlBox,

    /// <summary>Leads a cable into an enclosure.</summary>
    Gland,

    /// <summary>Cuts the mains on a small fault current.</summary>
    ResidualCurrentDevice,

    /// <summary>Protects a cable.</summary>
    Fuse,

    /// <summary>Protects a mains cable, in the mains box.</summary>
    CircuitBreaker,

    /// <summary>Protects a cable mechanically, by the metre.</summary>
    Conduit,

    /// <summary>Draws a night cover.</summary>
    CoverMotor,

    /// <summary>Wires and clips that carry a night cover, by the square metre.</summary>
    CoverWires,

    /// <summary>Machine and haulage for one compost heap.</summary>
    HeapHire,

    /// <summary>Keeps algae and corrosion out of a store.</summary>
    WaterTreatment,

    /// <summary>Says what must not be touched, drunk or shut.</summary>
    WarningLabel,

    /// <summary>Weight that holds a stand down, by the kilogram.</summary>
    Ballast,

    /// <summary>Switches some hours after it is started.</summary>
    DelayRelay,

    /// <summary>Lets a motor come back past an end switch that is open.</summary>
    Diode,

    /// <summary>Works a drive, a valve or a cover by hand, or leaves it to its control.</summary>
    HandSwitch,

    /// <summary>Opens a heater's circuit when it grows too hot.</summary>
    HighLimit,

    /// <summary>An earth of the greenhouse's own.</summary>
    EarthRod,

    /// <summary>Cuts the greenhouse off the mains.</summary>
    Isolator,

    /// <summary>Where a mains device is plugged in.</summary>
    SocketOutlet,

    /// <summary>Warns who digs, by the metre.</summary>
    WarningTape,

    /// <summary>An enclosure for a supply of extra-low voltage.</summary>
    SupplyBox,

    /// <summary>Ten terminals for the cores of cables.</summary>
    Terminals,

    /// <summary>Keeps grit out of a pump.</summary>
    Strainer,

    /// <summary>Throttles a flow to what is wanted.</summary>
    RegulatingValve,

    /// <summary>Shows how much flows.</summary>
    FlowIndicator,

    /// <summary>Fills an open store from drinking water over a gap of air that nothing can be drawn back through.</summary>
    FreeOutlet,

    /// <summary>Keeps valves shut while a sensor is too cold.</summary>
    TemperatureRelay,

    /// <summary>Gives a circuit to one of two controls.</summary>
    ChangeoverRelay,

    /// <summary>Leads drained water to a drain that does not freeze.</summary>
    DrainPoint,

    /// <summary>A float valve that makes up what an open store lost, over a gap of air.</summary>
    MakeUpValve,

    /// <summary>An open tank above a filled loop: takes up its growth, lets air out and shows its level.</summary>
    HeaderTank,

    /// <summary>Unions, tees and elbows of a compost heap's pipe.</summary>
    HeapFittings,

    /// <summary>Mesh round a compost heap, by the square metre.</summary>
    HeapCage,

    /// <summary>Catches what seeps out of a compost heap, by the square metre.</summary>
    HeapTray,

    /// <summary>A thermometer that is pushed into a compost heap.</summary>
    ProbeThermometer,

    /// <summary>A thermostat whose sensor lies somewhere else.</summary>
    ProbeThermostat,

    /// <summary>Antifreeze to be mixed with water, by the litre.</summary>
    AntifreezeConcentrate,

    /// <summary>An hour of a licensed electrician.</summary>
    LicensedHour,

    /// <summary>Shows the strength and state of antifreeze.</summary>
    FluidTest,

    /// <summary>For bearings and screws that turn outdoors.</summary>
    Grease,

    /// <summary>Rusts away in the place of an enamelled tank.</summary>
    Anode,

    /// <summary>Stops a pump by itself when the tank it sits in grows too hot, whatever its sensors say.</summary>
    TankCutOut,

    /// <summary>Wrapped round pipe or sleeve that sunlight would spoil, by the metre.</summary>
    SunWrap,

    /// <summary>Cuts the devices off before a battery is empty.</summary>
    LowVoltageDisconnect,

    /// <summary>An enclosure for one battery, with air to the outside.</summary>
    BatteryBox,

    /// <summary>Cuts a photovoltaic panel off, at direct current.</summary>
    PanelSwitch,

    /// <summary>Leads the surge of a near strike of lightning to earth, where a mains cable comes in.</summary>
    SurgeProtection,
}
