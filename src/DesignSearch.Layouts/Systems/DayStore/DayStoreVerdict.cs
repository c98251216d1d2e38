namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>Why a day-heat store is, or is not, worth its digging.</summary>
public enum DayStoreVerdict
{
    /// <summary>Nothing speaks against it.</summary>
    Worth,

    /// <summary>The fan takes more than a third of what comes back: a heat pump gives as much for the current.</summary>
    FanEatsIt,

    /// <summary>Hardly any day heat was carried down: the sun is too short, and what comes back is heat of the ground.</summary>
    SunTooShort,

    /// <summary>The soil is the bottleneck: more air does nothing.</summary>
    SoilLimits,

    /// <summary>The air is the bottleneck: more pipe does nothing.</summary>
    AirLimits,
}
