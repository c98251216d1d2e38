using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Gathering;

/// <summary>What gathered day heat adds to the books and to the hourly table.</summary>
public static class GatheringFlows
{
    /// <summary>Surplus of the house that the fan coil brings into the tank.</summary>
    public static Flow Gathered { get; } = new("gathered", Accounts.House, SolarFlows.Loop.Id, "day heat of the house gathered into the tank");

    /// <summary>Electricity of pump and fan meanwhile, which ends in the air.</summary>
    public static Flow FanHeat { get; } = new("gathering-fan", Accounts.Mains, Accounts.House, "pump and fan while they gather day heat");

    /// <summary>Pump and fan meanwhile.</summary>
    public static Use Fan { get; } = new("gathering", "pump and fan while they gather day heat", IsHeat: false);

    /// <summary>Mean of the hour.</summary>
    public static HourColumn GatheredW { get; } = new("gathered_w", "gathered into the tank", "W");

    internal static SourceKind Kind { get; } = new("gathering", 85)
    {
        UsesTank = true,
        Flows = [Gathered, FanHeat],
        Uses = [Fan],
        Columns = [GatheredW],
    };
}
