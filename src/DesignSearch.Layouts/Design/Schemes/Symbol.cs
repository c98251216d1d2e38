namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>How a component is drawn: signs after IEC 60617 and ISO 14617, as remembered.</summary>
public enum Symbol
{
    /// <summary>A box with its name.</summary>
    Plain,

    /// <summary>A solar collector.</summary>
    Collector,

    /// <summary>A tank.</summary>
    Tank,

    /// <summary>A pump.</summary>
    Pump,

    /// <summary>A valve.</summary>
    Valve,

    /// <summary>A valve that lets water through one way.</summary>
    CheckValve,

    /// <summary>A valve that opens before pressure becomes dangerous.</summary>
    ReliefValve,

    /// <summary>An expansion vessel.</summary>
    Vessel,

    /// <summary>An air vent.</summary>
    Vent,

    /// <summary>A motor.</summary>
    Motor,

    /// <summary>A fan.</summary>
    Fan,

    /// <summary>Something that current heats.</summary>
    Heater,

    /// <summary>A contact that heat works.</summary>
    Thermostat,

    /// <summary>A contact that light works.</summary>
    LightSensor,

    /// <summary>A temperature sensor.</summary>
    Sensor,

    /// <summary>A contact that the end of a way works.</summary>
    LimitSwitch,

    /// <summary>A coil with its contacts.</summary>
    Relay,

    /// <summary>A contact that a clock works.</summary>
    Clock,

    /// <summary>A controller.</summary>
    Controller,
}
