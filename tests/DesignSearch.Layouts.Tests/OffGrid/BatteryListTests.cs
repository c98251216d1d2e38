using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.OffGrid;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Panels, battery and all that joins them, of many plants without mains: so many of each as there must be, and each the cheapest of the catalogue that bears it.</summary>
public sealed class BatteryListTests : IDisposable
{
    private readonly LonelyHouse house = new();

    public void Dispose() => house.Dispose();

    [Fact]
    public void There_is_so_much_of_each_as_the_plan_wants()
    {
        foreach (var (_, built, plan) in Plants())
        {
            decimal Of(Purpose purpose) => built.Parts.Where(p => p.Purpose == purpose).Sum(p => p.Quantity);
            Assert.Equal(plan.InSeries * plan.Strings, Of(OffGridPurposes.Panel));
            Assert.Equal(plan.InSeries * plan.Strings, Of(OffGridPurposes.Bracket));
            Assert.Equal(plan.BatteriesInSeries * plan.BatteryStrings, Of(OffGridPurposes.Battery));
            Assert.Equal(plan.BatteriesInSeries * plan.BatteryStrings, Of(OffGridPurposes.BatteryBox));
            Assert.Equal((1, 1, 1, 1), (Of(OffGridPurposes.Controller), Of(OffGridPurposes.Guard), Of(OffGridPurposes.PanelSwitch), Of(OffGridPurposes.Fuse(plan.Fuse!.RatedA))));
            // One for the cable of the panels, one for that of the battery.
            Assert.Equal(2, Of(OffGridPurposes.Gland));
            // Ten metres to the panels, a metre and a half at the battery and 0.4 for each: 5 % for cuts, bought to the tenth.
            Assert.Equal(10.5m, Of(OffGridPurposes.PanelCable));
            Assert.Equal(Math.Ceiling(10.5m * (1.5m + (0.4m * plan.Batteries))) / 10, Of(OffGridPurposes.BatteryCable), 1);
            Assert.Equal(24 / plan.Battery.Volts, plan.BatteriesInSeries, 1e-9);
        }
    }

    [Fact]
    public void Fuse_and_cables_are_the_cheapest_that_bear_what_they_meet()
    {
        foreach (var (scenario, _, plan) in Plants())
        {
            decimal Price(IPart part) => part.Info.Price;
            var fuses = scenario.Catalogue.All.OfType<BatteryFuse>().Where(f => f.RatedA >= plan.FuseA && f.BreaksA >= plan.BatteryStrings * plan.Battery.ShortA && f.MostV >= BatterySizing.MostChargeV).ToList();
            Assert.Equal(fuses.Min(Price), Price(plan.Fuse!));
            Assert.True(plan.Fuse!.RatedA >= 1.25 * Math.Max(plan.ChargeA, plan.RunningA) && plan.Fuse.RatedA >= plan.StartA);
            var cables = scenario.Catalogue.All.OfType<Cable>().Where(c => c.IsOutdoor && c.MaxVolts < 400).ToList();
            // A fuse melts at 1.6 times its size, a cable stands 1.45 times what it bears.
            Assert.True(plan.BatteryCable!.RatedA * 1.45 >= plan.Fuse.RatedA * 1.6 - 1e-9);
            var current = plan.Strings * plan.Panel.ShortA;
            bool Serves(Cable c) => c.RatedA >= 1.25 * current && c.MaxVolts >= plan.ColdOpenV && CableDrop.Volts(c, 10, current) <= 0.03 * plan.InSeries * plan.Panel.WorkingV;
            Assert.True(Serves(plan.PanelCable!), plan.PanelCable!.Id);
            Assert.Equal(cables.Where(Serves).Min(Price), Price(plan.PanelCable!));
            Assert.Equal(cables.Where(c => c.RatedA * 1.45 >= plan.Fuse.RatedA * 1.6).Min(Price), Price(plan.BatteryCable));
        }
    }

    // Every panel in one string or two, every controller, every battery in one to four: none that outlasts the dark is dearer by more than the table's three in a hundred, none is cheaper.
    [Fact]
    public void No_cheaper_panels_and_battery_outlast_the_dark()
    {
        foreach (var (scenario, _, plan) in Plants())
        {
            var winters = DarkWinters.Of(scenario);
            var load = plan.StandingW - plan.Controller.OwnW;
            double Years(IPart part) => (double)part.Info.Price * Math.Max(1, Math.Ceiling(scenario.Money.Years / part.Info.LifeYears));
            var (chosen, least) = (double.NaN, double.PositiveInfinity);
            foreach (var panel in scenario.Catalogue.All.OfType<SunPanel>())
            {
                var series = (int)Math.Ceiling(30 / panel.WorkingV - 1e-9);
                var open = series * BatterySize.OpenV(panel.OpenV, panel.OpenLossPerK, winters.LowestC);
                foreach (var strings in new[] { 1, 2 })
                {
                    foreach (var controller in scenario.Catalogue.All.OfType<ChargeController>())
                    {
                        var peak = series * strings * panel.Watts;
                        if (open > 60 || controller.Volts != 24 || controller.RatedA < peak / 24 - 1e-9 || controller.MostV < open)
                            continue;
                        foreach (var battery in scenario.Catalogue.All.OfType<Battery>())
                        {
                            var useful = peak * 0.85 * 0.97 * controller.Efficiency * battery.ChargeEfficiency;
                            var standing = load + controller.OwnW;
                            if (winters.LowestC < Math.Max(battery.LeastChargeC, battery.LeastC) || winters.LeastRefill(standing, plan.DaylightW, useful) < 1.1)
                                continue;
                            var burst = plan.RunWh - winters.Darkest(plan.StandingW, plan.DaylightW, Useful(plan)).Wh;
                            var depth = Math.Min(battery.UsableDepth, 1 - BatterySize.ChargeAgainstFrost(battery.Chemistry, winters.LowestC));
                            var wanted = BatterySize.AmpHours(winters.Darkest(standing, plan.DaylightW, useful).Wh + burst, depth, battery.AgedShare, BatterySize.ColdFactor(battery.Chemistry, winters.LowestC), 24);
                            var many = Math.Max(1, Math.Ceiling(Math.Max(wanted / battery.AmpHours, Math.Max(peak / 24 / battery.MostChargeA, plan.StartA / battery.MostA)) - 1e-9));
                            if (many > 4)
                                continue;
                            var cost = Years(controller) + (series * strings * Years(panel)) + (many * Math.Round(24 / battery.Volts) * Years(battery));
                            least = Math.Min(least, cost);
                            if (panel != plan.Panel || strings != plan.Strings || controller != plan.Controller || battery != plan.Battery)
                                continue;
                            Assert.Equal(many, plan.BatteryStrings);
                            chosen = cost;
                        }
                    }
                }
            }

            Assert.InRange(chosen, least, 1.03 * least);
        }
    }

    private static double Useful(BatteryPlan plan) => plan.PeakW * 0.85 * 0.97 * plan.Controller.Efficiency * plan.Battery.ChargeEfficiency;

    private IEnumerable<(Scenario Scenario, BuiltLayout Built, BatteryPlan Plan)> Plants()
    {
        var scenario = house.Read();
        (string, object)[][] plants =
        [
            [], [("collector_count", 1)], [("pump", "solar-pump-10w")], [("release_count", 2)], [("mount", "two-position-rocker"), ("drive", "slew-600nm"), ("limit_deg", 30), ("switch_hours", 5.5)],
            [("barrel", "barrel-200-used"), ("barrel_count", 2)],
        ];
        var found = plants.Select(p => (Scenario: scenario, Built: LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, p)))).Where(p => p.Built.Missing.Count == 0
            && p.Built.Supply?.Battery is { Refill: >= BatterySizing.LeastRefill } plan && plan.NeededAmpHours <= plan.AmpHours).ToList();
        Assert.True(found.Count >= 3, $"{found.Count} plants");
        return found.Select(f => (f.Scenario, f.Built, f.Built.Supply!.Battery!));
    }
}
