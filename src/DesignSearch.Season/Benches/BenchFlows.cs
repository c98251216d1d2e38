using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Benches;

/// <summary>What a bench under fleece adds to the books and to the hourly table.</summary>
public static class BenchFlows
{
    /// <summary>The bench.</summary>
    public static Store Bench { get; } = new("bench", "bench under fleece");

    /// <summary>Its electric heat.</summary>
    public static Flow Heat { get; } = new("bench-heat", Accounts.Mains, Bench.Id, "heated bench");

    /// <summary>Through the fleece into the house: to the air, and by long-wave to the cover.</summary>
    public static Flow Fleece { get; } = new("bench-fleece", Bench.Id, Accounts.House, "through the fleece into the house", "from the house through the fleece");

    /// <summary>Its electricity.</summary>
    public static Use Heater { get; } = new("bench", "heated bench", IsHeat: true);

    /// <summary>Air and pots under the fleece, mean of the hour.</summary>
    public static HourColumn Air { get; } = new("bench_c", "on the bench", "°C");

    /// <summary>Electric heat, mean of the hour.</summary>
    public static HourColumn HeatW { get; } = new("bench_w", "heated bench", "W", IsElectricHeat: true);

    internal static SourceKind Kind { get; } = new("bench", 10)
    {
        Flows = [Heat, Fleece],
        Uses = [Heater],
        Stores = [Bench],
        Columns = [Air, HeatW],
        Doors = DoorUse.InnerSource,
        HoldsPlants = true,
    };
}
