namespace DesignSearch.Physics;

/// <summary>Ice at 0 °C.</summary>
public static class Ice
{
    /// <summary>Heat that a kilogram takes to melt [J/kg].</summary>
    public const double MeltingJPerKg = 333_550;

    /// <summary>Specific heat [J/(kg·K)].</summary>
    public const double HeatJPerKgK = 2100;
}
