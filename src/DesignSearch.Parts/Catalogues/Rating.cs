namespace DesignSearch.Parts.Catalogues;

/// <summary>What a part may be rated for.</summary>
public enum Rating
{
    /// <summary>Hottest water, air or surface that it stands [°C].</summary>
    TemperatureC,

    /// <summary>Current that it carries or switches [A].</summary>
    CurrentA,

    /// <summary>Pressure above that of the air that it stands [bar].</summary>
    PressureBar,
}
