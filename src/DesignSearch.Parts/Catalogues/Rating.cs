namespace DesignSearch.Parts.Catalogues;

/// <summary>What a part may be rated for.</summary>
public enum Rating
{
    /// <summary>Hottest water, air or surface that it stands [°C].</summary>
    TemperatureC,

    /// <summary>Moment about an axis that it holds [N·m].</summary>
    TorqueNm,

    /// <summary>Current that it carries or switches [A].</summary>
    CurrentA,

    /// <summary>Voltage that it blocks or works at [V].</summary>
    VoltageV,

    /// <summary>Two digits after IEC 60529: what gets into an enclosure.</summary>
    IpCode,

    /// <summary>Pressure above that of the air that it stands [bar].</summary>
    PressureBar,

    /// <summary>Current of a dead short that it breaks [A].</summary>
    BreakingA,

    /// <summary>Push or pull that it holds [N].</summary>
    ForceN,
}
