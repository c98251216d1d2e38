using DesignSearch.Season.Flows;

namespace DesignSearch.Season.Heaters;

/// <summary>What the stand-by heater books: electricity, and the heat it becomes.</summary>
public static class HeaterFlows
{
    /// <summary>Its heat.</summary>
    public static Flow Heat { get; } = new("heater", Accounts.Mains, Accounts.House, "stand-by heater");

    /// <summary>Its electricity.</summary>
    public static Use Heater { get; } = new("heater", "stand-by heater", IsHeat: true);
}
