using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Compost;

/// <summary>What a compost heap adds to the books, to the outcome and to the hourly table.</summary>
public static class CompostFlows
{
    /// <summary>The heap.</summary>
    public static Store Heap { get; } = new("heap", "compost heap");

    /// <summary>Heat of rotting.</summary>
    public static Flow Rotting { get; } = new("compost-rotting", "rotting", Heap.Id, "rotting compost");

    /// <summary>From the heap to the outside, steam included.</summary>
    public static Flow Loss { get; } = new("compost-loss", Heap.Id, Accounts.OutsideAir, "from the compost heap to the outside", "from the outside into the compost heap");

    /// <summary>From the heap through its coil into the house.</summary>
    public static Flow Draw { get; } = new("compost-draw", Heap.Id, Accounts.House, "from the compost heap into the house", "from the house into the compost heap");

    /// <summary>The pump of its coil; its heat is left out of the model.</summary>
    public static Use Pump { get; } = new("compost-pump", "compost heap's pump", IsHeat: false);

    /// <summary>How long that pump ran.</summary>
    public static Figure PumpHours { get; } = new("compost-pump-hours", "compost heap's pump, full-load hours", "h");

    /// <summary>Lowest core at the end of an hour.</summary>
    public static Figure LowestCore { get; } = new("compost-lowest-core", "lowest core of the compost heap", "°C");

    /// <summary>Biodegradable solids left at the end of those at the start; NaN where there were none.</summary>
    public static Figure SolidsLeft { get; } = new("compost-solids-left", "share of the compost's degradable solids left", "1");

    /// <summary>The core at the end of the hour.</summary>
    public static HourColumn Core { get; } = new("compost_core_c", "core of the compost heap", "°C");

    /// <summary>Heat from the heap into the house, mean of the hour.</summary>
    public static HourColumn DrawW { get; } = new("compost_w", "heat from the compost heap", "W");

    internal static SourceKind Kind { get; } = new("compost", 20)
    {
        Offers = 1,
        Flows = [Rotting, Loss, Draw],
        Uses = [Pump],
        Stores = [Heap],
        Figures = [PumpHours, LowestCore, SolidsLeft],
        Columns = [Core, DrawW],
    };
}
