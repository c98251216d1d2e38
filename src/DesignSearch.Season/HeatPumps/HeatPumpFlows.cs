using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.HeatPumps;

/// <summary>What a heat pump adds to the books, to the outcome and to the hourly table.</summary>
public static class HeatPumpFlows
{
    /// <summary>Its heat, drawn from the air outside and from its current.</summary>
    public static Flow Heat { get; } = new("heat-pump", "heat-pump", Accounts.House, "heat of the heat pump");

    /// <summary>Electricity of compressor and fans while it runs.</summary>
    public static Use Current { get; } = new("heat-pump", "heat pump", IsHeat: true);

    /// <summary>Electricity while the compressor rests; it warms nothing in the house.</summary>
    public static Use Idle { get; } = new("heat-pump-idle", "heat pump at rest", IsHeat: false);

    /// <summary>Heat over all its electricity; NaN where it took none.</summary>
    public static Figure Cop { get; } = new("heat-pump-cop", "heat pump, heat over all its electricity", "1");

    /// <summary>How long its compressor ran.</summary>
    public static Figure Hours { get; } = new("heat-pump-hours", "heat pump, hours its compressor ran", "h");

    /// <summary>Hours in which it rested because of the cold outside.</summary>
    public static Figure TooColdHours { get; } = new("heat-pump-too-cold-hours", "hours too cold outside for the heat pump", "h");

    /// <summary>Its heat, mean of the hour.</summary>
    public static HourColumn HeatW { get; } = new("heat_pump_w", "heat pump", "W");

    /// <summary>Current of compressor and fans, mean of the hour.</summary>
    public static HourColumn CurrentW { get; } = new("heat_pump_current_w", "heat pump's current", "W", IsElectricHeat: true);

    internal static SourceKind Kind { get; } = new("heat-pump", 30)
    {
        Offers = 1,
        Flows = [Heat],
        Uses = [Current, Idle],
        Figures = [Cop, Hours, TooColdHours],
        Columns = [HeatW, CurrentW],
    };
}
