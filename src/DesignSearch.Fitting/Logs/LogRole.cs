namespace DesignSearch.Fitting.Logs;

/// <summary>What a column of a log stands for.</summary>
public enum LogRole
{
    /// <summary>Nothing that a fit needs.</summary>
    None,

    /// <summary>Air in the house [°C].</summary>
    Inside,

    /// <summary>Air outside [°C].</summary>
    Outside,

    /// <summary>Power of the heater [W].</summary>
    HeaterWatts,

    /// <summary>The heater runs, 1, or rests, 0.</summary>
    HeaterOn,

    /// <summary>Reading of the heater's meter [kWh], rising.</summary>
    HeaterMeter,

    /// <summary>Heat of one system of a house that was built [W].</summary>
    SystemWatts,
}
