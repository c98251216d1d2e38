namespace DesignSearch.Parts.Solar;

/// <summary>How a collector is kept from freezing.</summary>
public enum FreezeMethod
{
    /// <summary>Valves let the water out at night.</summary>
    DrainedByValves,

    /// <summary>The water runs back by itself when the pump stops.</summary>
    DrainBack,

    /// <summary>A closed loop of antifreeze with an exchanger.</summary>
    Antifreeze,
}
