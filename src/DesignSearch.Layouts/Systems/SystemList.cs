using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Systems.Barrels;
using DesignSearch.Layouts.Systems.Benches;
using DesignSearch.Layouts.Systems.Compost;
using DesignSearch.Layouts.Systems.DayStore;
using DesignSearch.Layouts.Systems.Heaters;
using DesignSearch.Layouts.Systems.HeatPumps;
using DesignSearch.Layouts.Systems.Shell;
using DesignSearch.Layouts.Systems.Skin;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Layouts.Systems.Supply;

namespace DesignSearch.Layouts.Systems;

/// <summary>The one list of what can be built: docs/add-a-heat-source.md.</summary>
public static class SystemList
{
    /// <summary>All systems, in the order of choices, lists and words; the supply last, for it sees what all others need.</summary>
    public static SystemSet All { get; } = new(
    [
        new ShellSystem(), new SkinSystem(), new BarrelSystem(), new HeaterSystem(), new BenchSystem(), new SolarSystem(), new CompostSystem(),
        new HeatPumpSystem(), new DayStoreSystem(), new SupplySystem(),
    ]);
}
