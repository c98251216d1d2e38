namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>When a device may run, at most.</summary>
public enum RunTime
{
    /// <summary>At any hour: what a thermostat starts, and what is always on.</summary>
    Always,

    /// <summary>While there is any daylight.</summary>
    Daylight,
}
