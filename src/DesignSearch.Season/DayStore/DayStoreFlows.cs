using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.DayStore;

/// <summary>What a day-heat store adds to the books, to the outcome and to the hourly table.</summary>
public static class DayStoreFlows
{
    private const string Vapour = "vapour";

    /// <summary>The soil round its pipes.</summary>
    public static Store Ring { get; } = new("day-store", "soil round the pipes of the day-heat store");

    /// <summary>Day heat that the fan carries down.</summary>
    public static Flow Charge { get; } = new("day-store-charge", Accounts.House, Ring.Id, "day heat carried down into the store");

    /// <summary>Heat that the fan brings back.</summary>
    public static Flow Return { get; } = new("day-store-return", Ring.Id, Accounts.House, "brought back from the day-heat store");

    /// <summary>From the soil round the pipes into the ground that is the house's own.</summary>
    public static Flow Soil { get; } =
        new("day-store-soil", Ring.Id, Accounts.House, "from the day-heat store into the soil", "from the soil into the day-heat store");

    /// <summary>Heat of the water that condenses in the pipes; sun evaporated it, and the house's own sun does not hold it.</summary>
    public static Flow Condensed { get; } = new("day-store-condensed", Vapour, Ring.Id, "condensation in the day-heat store");

    /// <summary>Heat that water left in the pipes takes as it dries.</summary>
    public static Flow Evaporated { get; } = new("day-store-evaporated", Ring.Id, Vapour, "drying of the day-heat store's pipes");

    /// <summary>The fan's electricity, which ends in the air.</summary>
    public static Flow FanHeat { get; } = new("day-store-fan", Accounts.Mains, Accounts.House, "fan of the day-heat store");

    /// <summary>The fan.</summary>
    public static Use Fan { get; } = new("day-store-fan", "fan of the day-heat store", IsHeat: false);

    /// <summary>Heat brought back over the fan's electricity; NaN where it never ran.</summary>
    public static Figure Cop { get; } = new("day-store-cop", "day-heat store, heat brought back over its fan's electricity", "1");

    /// <summary>Share of what was brought back that was never carried down; 0 where as much or more was.</summary>
    public static Figure GroundShare { get; } =
        new("day-store-ground-share", "share of the heat brought back that is the ground's own", "1");

    /// <summary>How long the fan ran.</summary>
    public static Figure Hours { get; } = new("day-store-hours", "day-heat store, hours its fan ran", "h");

    /// <summary>Soil at the pipes at the end of the hour.</summary>
    public static HourColumn RingC { get; } = new("day_store_c", "soil round the pipes", "°C");

    /// <summary>Brought back less carried down, mean of the hour.</summary>
    public static HourColumn ReturnW { get; } = new("day_store_w", "day-heat store", "W");

    internal static SourceKind Kind { get; } = new("day-store", 90)
    {
        Offers = 1,
        Doors = DoorUse.Sources,
        Flows = [Charge, Return, Soil, Condensed, Evaporated, FanHeat],
        Uses = [Fan],
        Stores = [Ring],
        Figures = [Cop, GroundShare, Hours],
        Columns = [RingC, ReturnW],
    };
}
