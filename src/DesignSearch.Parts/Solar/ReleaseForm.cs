namespace DesignSearch.Parts.Solar;

/// <summary>What gives the heat to the air.</summary>
public enum ReleaseForm
{
    /// <summary>Pipe without insulation, by the metre.</summary>
    BarePipe,

    /// <summary>A radiator without a fan.</summary>
    Radiator,

    /// <summary>A finned coil with a fan.</summary>
    FanCoil,
}
