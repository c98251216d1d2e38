namespace DesignSearch.Parts.OffGrid;

/// <summary>What a battery is made of.</summary>
public enum BatteryChemistry
{
    /// <summary>Lead and liquid acid: gives off hydrogen while it is charged, and is topped up with water.</summary>
    OpenLead,

    /// <summary>Lead with the acid bound; overcharged it gives off hydrogen all the same.</summary>
    SealedLead,

    /// <summary>Lithium iron phosphate.</summary>
    Lithium,
}
