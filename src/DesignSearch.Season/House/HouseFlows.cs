using DesignSearch.Season.Flows;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.House;

/// <summary>Heat that the house itself takes and gives.</summary>
public static class HouseFlows
{
    /// <summary>Air, cover, floor, soil, barrels and back wall.</summary>
    public static Store House { get; } = new(Accounts.House, "house, soil and barrels");

    /// <summary>Sun that passed the cover and stayed as heat.</summary>
    public static Flow Sun { get; } = new("sun-house", Accounts.Sun, Accounts.House, "sun through the cover");

    /// <summary>Through the cover to the outside air.</summary>
    public static Flow CoverToAir { get; } = new("cover-air", Accounts.House, Accounts.OutsideAir, "through the cover to the outside air", "from the outside air into the cover");

    /// <summary>From the cover to the sky.</summary>
    public static Flow CoverToSky { get; } = new("cover-sky", Accounts.House, Accounts.Sky, "from the cover to the sky", "from the sky into the cover");

    /// <summary>With leaking air.</summary>
    public static Flow Leakage { get; } = new("leakage", Accounts.House, Accounts.OutsideAir, "with leaking air", "with warm air leaking in");

    /// <summary>Through opened vents.</summary>
    public static Flow Vents { get; } = new("vents", Accounts.House, Accounts.OutsideAir, "through opened vents", "with warm air through opened vents");

    /// <summary>Into the ground, edge included; what the ground gives counts as heat that came in.</summary>
    public static Flow Ground { get; } = new("ground", Accounts.House, Accounts.Ground, "into the ground", "out of the ground");

    /// <summary>Through the solid back wall to the outside.</summary>
    public static Flow Wall { get; } = new("wall", Accounts.House, Accounts.OutsideAir, "through the solid wall to the outside air", "from the outside air into the solid wall");

    // In the order in which the house books them.
    internal static Flow[] Flows { get; } = [Sun, HeaterFlows.Heat, SolarFlows.ReleaseFan, SolarFlows.Release, CoverToAir, CoverToSky, Leakage, Vents, Ground, Wall];

    internal static Use[] Uses { get; } = [HeaterFlows.Heater, SolarFlows.ReleaseUse];
}
