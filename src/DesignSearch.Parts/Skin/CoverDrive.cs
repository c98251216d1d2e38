namespace DesignSearch.Parts.Skin;

/// <summary>Who draws a night cover.</summary>
public enum CoverDrive
{
    /// <summary>Somebody, every evening and morning.</summary>
    Hand,

    /// <summary>A motor, told by a light sensor.</summary>
    Sensor,

    /// <summary>A motor, told by a timer that is set anew each month.</summary>
    Clock,
}
