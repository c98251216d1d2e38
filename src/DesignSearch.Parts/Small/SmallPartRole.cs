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

    /// <summary>Opens before pressure becomes dangerous.</summary>
    ReliefValve,

    /// <summary>Lets air or steam out at the highest place.</summary>
    AirVent,

    /// <summary>Takes up the growth of hot water in a closed loop.</summary>
    ExpansionVessel,

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

    /// <summary>Ready mixed antifreeze, by the litre.</summary>
    AntifreezeFluid,

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
}
