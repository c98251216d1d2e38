namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Where the supply of an extra-low voltage stands.</summary>
internal enum SupplySpot
{
    /// <summary>In the dwelling, on its mains.</summary>
    Dwelling,

    /// <summary>In the greenhouse, beside the mains box.</summary>
    MainsBox,

    /// <summary>In the greenhouse, on the battery.</summary>
    Battery,
}
