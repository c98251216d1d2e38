namespace DesignSearch.Layouts.Design.Duties;

/// <summary>A state that a plant is in sooner or later, and that every part of it must bear.</summary>
public enum PlantState
{
    /// <summary>Everything runs in full sun.</summary>
    Running,

    /// <summary>The collector stands without flow in full sun.</summary>
    StandingInSun,

    /// <summary>The pump starts on a collector that has stood in the sun.</summary>
    StartedHot,

    /// <summary>The loop is drained for the night.</summary>
    Drained,

    /// <summary>The coldest night of the design winters.</summary>
    DesignNight,

    /// <summary>A gale.</summary>
    Gale,

    /// <summary>The current is out, for hours or days.</summary>
    PowerCut,

    /// <summary>A sensor or end switch is dead, and nobody has seen it.</summary>
    DeadSensor,
}
