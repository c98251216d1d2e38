using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Skin;
using DesignSearch.Season;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>Works a layout out: choices become physical numbers and a list of what is needed.</summary>
public static class LayoutBuilder
{
    /// <summary>Works one layout out.</summary>
    /// <param name="scenario">Place, house and catalogue.</param>
    /// <param name="layout">The choices; every part they name is in the scenario's catalogue.</param>
    /// <exception cref="ArgumentException">The layout names a part that the catalogue lacks.</exception>
    public static BuiltLayout Build(Scenario scenario, Layout layout) => Build(scenario, Begin(scenario, layout));

    /// <summary>The first half of the work: what most checks need, before anything is listed.</summary>
    internal static BegunLayout Begin(Scenario scenario, Layout layout)
    {
        var needs = new Needs(scenario.Catalogue, scenario.Money.Prices);
        var solar = SolarBuilding.Build(scenario, layout, needs);
        var floor = StoreBuilding.FloorM2(scenario.Catalogue, layout) + (solar is null ? 0 : solar.TankCount * solar.Tank.FootprintM2);
        scenario.Catalogue.TryFind<Heater>(layout["heater"].Id, out var standby);
        var heater = standby is null ? HeaterNumbers.None : new HeaterNumbers(standby.Watts, layout["heater_set_c"].Number, standby.BandK);
        return new(layout, needs, solar, floor, standby, heater);
    }

    /// <summary>The second half: everything listed, and the current brought to it.</summary>
    internal static BuiltLayout Build(Scenario scenario, BegunLayout begun)
    {
        var (layout, needs, solar, floor, standby, heater) = begun;
        var house = HouseBuilding.Build(scenario, layout, needs);
        var barrels = StoreBuilding.Build(scenario, layout, needs);
        if (solar is not null)
            SolarBuilding.List(solar, scenario, layout, needs);
        var (compost, heapPump) = CompostBuilding.Build(scenario, layout, needs);
        var (bench, benchPart) = BenchBuilding.Build(scenario, layout, needs);
        if (standby is not null)
            needs.Add(standby, 1, "stand-by heater", "Holds the limit when all else is spent.", "half a metre clear all round, never under film");

        var movesCover = scenario.Catalogue.TryFind<NightCover>(layout["night_cover"].Id, out var cover) && cover.IsAutomatic;
        var supply = SupplyBuilding.Build(scenario, layout, solar, standby, heapPump, benchPart, movesCover, needs);
        return new BuiltLayout
        {
            Layout = layout,
            Installation = new Installation(
                house,
                barrels,
                solar is null ? TankNumbers.None : SolarBuilding.Tank(solar),
                solar is null ? CollectorNumbers.None : SolarBuilding.Collector(solar, layout),
                solar is null ? PipeRunNumbers.None : SolarBuilding.PipeRun(solar, scenario.Site.PipeRunM),
                solar is null ? ReleaseNumbers.None : SolarBuilding.Release(solar, layout),
                heater)
            { Sources = [compost, bench] },
            Mount = solar is null ? null : SolarBuilding.MountOf(solar, layout),
            Solar = solar,
            Supply = supply,
            StoreFloorM2 = floor,
            Parts = needs.Parts,
            Missing = needs.Missing,
        };
    }
}
