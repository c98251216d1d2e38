using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Parts.Money;
using DesignSearch.Reporting.Words;
using DesignSearch.Season;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;

namespace DesignSearch.Reporting.Tests;

/// <summary>Layouts made up for tests of the report: names, prices and figures are invented and only as plausible as a picture needs.</summary>
internal static class InventedLayouts
{
    public const double BareDegreeHours = 2400;

    public static JudgedLayout Bare { get; } = Layout(new(false, 0, 0, "none", 0));

    /// <summary>Every layout that can be made from the invented options, not ranked yet.</summary>
    public static IEnumerable<JudgedLayout> All() =>
        from cover in new[] { false, true }
        from barrels in new[] { 0, 4 }
        from panels in new[] { 0, 2, 4 }
        from turning in panels == 0 ? ["none"] : new[] { "fixed", "two-position", "continuous" }
        from heater in new[] { 0, 1 }
        let options = new Options(cover, barrels, panels, turning, heater)
        where options != new Options(false, 0, 0, "none", 0)
        select Layout(options);

    private static JudgedLayout Layout(Options o)
    {
        var bill = Bill(o).ToList();
        var price = bill.Sum(l => l.Total);
        var turningGain = o.Turning switch { "two-position" => 1.07, "continuous" => 1.12, _ => 1.0 };
        var kept = (o.Cover ? 0.46 : 1) * (1 - (0.045 * o.Barrels)) * (1 - (0.125 * o.Panels * turningGain));
        var degreeHours = o.Heater > 0 ? 0 : Math.Max(0, BareDegreeHours * kept - 90);
        var standby = o.Heater > 0 ? 3100 * kept : 0;
        var electricity = (decimal)Math.Round(standby * 0.31 + (11 * o.Panels), 2);
        var running = new RunningCost(electricity, 40 * o.Panels, Math.Round(electricity * 11.9m, 2) + (40 * o.Panels));
        var yield = 148.5 * o.Panels * turningGain;
        var winters = new[] { Winter("typical", 0.75, 0.7, o, degreeHours, standby, yield), Winter("hard", 0.25, 1.9, o, degreeHours, standby, yield) };
        var holds = degreeHours == 0;
        var tooDear = price > 6000;
        return new()
        {
            Rank = 0,
            Slug = Slug(o),
            Title = Title(o),
            Turning = o.Turning,
            Choices = Choices(o),
            Holds = holds && !tooDear,
            PassesChecks = !tooDear,
            BuildPrice = price,
            LifeCost = price + running.PresentValue,
            Running = running,
            LabourHours = (o.Cover ? 9 : 0) + (1.5 * o.Barrels) + (8 * o.Panels) + (4 * o.Heater),
            Score = price == 0 ? 0 : winters.Sum(w => w.Weight * (900 - w.Outcome.FrostHours)) / (double)(price + running.PresentValue),
            FrostHours = winters.Sum(w => w.Weight * w.Outcome.FrostHours),
            WorstFrostHours = winters.Max(w => w.Outcome.FrostHours),
            FrostDegreeHoursKh = winters.Sum(w => w.Weight * w.Outcome.FrostDegreeHoursKh),
            LowestAirC = winters.Min(w => w.Outcome.LowestAirC),
            StandbyKwh = standby,
            CollectorYieldKwh = yield,
            PumpHours = o.Panels > 0 ? 512.4 : 0,
            CollectorAreaM2 = 2.02 * o.Panels,
            Winters = winters,
            Checks = Checks(price, tooDear, o),
            Bill = bill,
            Settings = Settings(o),
            Wires = o.Heater == 0 ? [] : [new("Heater", 230, 6.5, 6.5, "Mains cable 3 x 2.5 mm2", 3, 85, 16, 3.2, 10, false, "its own thermostat", "")],
            Cautions = Cautions(o),
            Papers = Papers(o),
        };
    }

    private static PlantPapers Papers(Options o) => new()
    {
        Steps = o.Panels == 0 ? [] : [new("Circulating pump 24 V: below the tank", "switch it on & off", "3.6 L/min <steady>", "L/min") { PartIds = ["pump-24"] }],
        Enquiry = o.Heater == 0 ? [] : [new(Trade.Electrician, "Heater", "8.7 A running"), new(Trade.Plumber, "Closed tank", "300 L")],
        Log = [new("coldest air inside", "°C"), new("what was seen", "")],
    };

    private static WinterOutcome Winter(string name, double weight, double hardness, Options o, double degreeHours, double standby, double yield)
    {
        var here = degreeHours * hardness;
        var passed = 1650.0;
        var heat = passed + (o.Panels * 410) + (standby * hardness) + 18;
        return new(name, weight, new Outcome
        {
            SeasonHours = 3624,
            FrostHours = (int)(here * 0.42),
            FrostDegreeHoursKh = here,
            LowestAirC = here == 0 ? 2.35 : 2 - Math.Pow(here, 0.3),
            LowestWithinHourC = here == 0 ? 2.1 : 1.8 - Math.Pow(here, 0.3),
            ColdestHour = 2646,
            CollectorYieldKwh = yield,
            PumpHours = o.Panels > 0 ? 512.4 : 0,
            ReleaseHours = 610,
            TankLowestC = o.Panels > 0 ? 6.4 : double.NaN,
            TankHighestC = o.Panels > 0 ? 58.3 : double.NaN,
            TankMeanC = o.Panels > 0 ? 24.1 : double.NaN,
            Books = new EnergyBooks(
                [
                    new(HouseFlows.Sun, passed),
                    new(SolarFlows.Sun, o.Panels * 410),
                    new(HeaterFlows.Heat, standby * hardness),
                    new(SolarFlows.ReleaseFan, 18),
                    new(SolarFlows.Release, yield * 0.9),
                    new(HouseFlows.CoverToAir, 0.41 * heat),
                    new(HouseFlows.CoverToSky, 0.2 * heat),
                    new(HouseFlows.Leakage, 0.16 * heat),
                    new(HouseFlows.Vents, 0.13 * heat - (o.Panels * 30)),
                    new(HouseFlows.Ground, 0.07 * heat),
                    new(SolarFlows.CollectorLoss, o.Panels * 26),
                    new(SolarFlows.PipeLoss, o.Panels * 4),
                ],
                [new(HeaterFlows.Heater, standby * hardness), new(SolarFlows.Pump, 7.7 * o.Panels)],
                [new(HouseFlows.House, 0.03 * heat), new(SolarFlows.Loop, 0)]),
        }, 0.4, o.Turning == "fixed" ? 0 : 302);
    }

    private static IEnumerable<BillLine> Bill(Options o)
    {
        if (o.Cover)
        {
            yield return Line("cover-fleece", "Night cover, quilted fleece 1.6 m wide", 38.4m, "m2", 7.85m, 0, "Night cover", "Halves what the roof loses after dusk.", "under the ridge, drawn at dusk");
            yield return Line("cover-track", "Curtain track with runners", 14m, "m", 4.2m, 0, "Night cover", "Carries the cover.", "both eaves");
        }

        if (o.Barrels > 0)
            yield return Line("barrel-200", "Water barrel 200 l, dark, with lid", o.Barrels, "piece", 34.5m, 1, "Barrels", "Gives back by night what the day's sun left.", "along the back wall, on the slab");
        if (o.Panels > 0)
        {
            yield return Line("collector-flat-2", "Flat collector 2.02 m² \"Hilltop\" <plain>", o.Panels, "piece", 389m, 0, "Collector", "Turns winter sun into warm water.", "frame beside the greenhouse");
            yield return Line("pipe-pex-20", "Plastic pipe 20 mm & fittings", 26.4m, "m", 2.35m, 12.5m, "Pipe", "Out and back, with one tenth for cuts.", "trench, 0.4 m deep");
            yield return Line("insulation-25", "Pipe insulation 25 mm", 26.4m, "m", 3.1m, 0, "Pipe", "Keeps the run from losing what the collector gains.", "over the whole run", pack: 2);
            yield return Line("tank-300", "Steel tank 300 l, open vented", 1, "piece", 410m, 0, "Tank", "Keeps the day's heat for the night.", "on the slab by the door");
            yield return Line("pump-24", "Circulating pump 24 V", 1, "piece", 89.9m, 0, "Pump", "Moves the water.", "below the tank");
        }

        if (o.Turning == "two-position")
            yield return Line("mount-two", "Two-position frame with actuator 24 V and limit switches", 1, "set", 268m, 0, "Turning", "Faces the morning, then the afternoon.", "concrete pads by the south side");
        if (o.Turning == "continuous")
            yield return Line("mount-sun", "Slewing drive with sun sensor", 1, "set", 640m, 0, "Turning", "Keeps the collector square to the sun.", "steel post in concrete");
        if (o.Heater > 0)
            yield return Line("heater-2000", "Fan heater 2 kW with thermostat, IPX4", 1, "piece", 96m, 0, "Stand-by", "Covers the nights that nothing else does.", "hung 1 m above the floor");
    }

    private static BillLine Line(string id, string name, decimal quantity, string unit, decimal price, decimal owned, string system, string why, string where, decimal? pack = null) =>
        new(id, name, quantity, unit, price, owned, Pricing.Total(quantity, owned, price, pack), system, why, where) { Pack = pack };

    private static string Title(Options o)
    {
        List<string> parts = [];
        if (o.Cover)
            parts.Add("a night cover");
        if (o.Barrels > 0)
            parts.Add($"{o.Barrels} water barrels");
        if (o.Panels > 0)
            parts.Add($"{o.Panels} collectors ({o.Turning})");
        if (o.Heater > 0)
            parts.Add("a 2 kW heater");
        return parts.Count == 0 ? "the bare house" : Say.Capital(Say.Joined(parts));
    }

    private static string Slug(Options o) => $"{(o.Cover ? "cover-" : "")}{o.Barrels}-barrels-{o.Panels}-{o.Turning}{(o.Heater > 0 ? "-heater" : "")}";

    private static Dictionary<string, string> Choices(Options o)
    {
        var choices = new Dictionary<string, string> { ["night_cover"] = o.Cover ? "cover-fleece" : "none", ["barrels"] = $"{o.Barrels}", ["collectors"] = $"{o.Panels}" };
        if (o.Panels > 0)
            choices["turning"] = o.Turning;
        choices["heater"] = o.Heater > 0 ? "heater-2000" : "none";
        return choices;
    }

    private static Check[] Checks(decimal price, bool tooDear, Options o) =>
    [
        new("budget", "Build price within the budget", !tooDear, (double)((6000 - price) / 6000), $"The parts cost {price} of 6000.", "the scenario"),
        new("pipe-rating", "Pipe stands the collector without flow", true, 0.21, o.Panels > 0 ? "The pipe is rated 95 °C, the run behind the open vent reaches 75 °C." : "There is no pipe.", "the maker's certificate in the catalogue"),
        new("torque-storm", "Drive holds in a storm", true, 0.62, "210 N·m of 550 N·m at 40 m/s.", "EN 1991-1-4:2005, from memory"),
    ];

    private static Setting[] Settings(Options o) => o.Panels == 0 && o.Heater == 0 ? [] :
    [
        new("Pump controller, on above", "7 K", "Starts when the collector is that much warmer than the tank."),
        new("Pump controller, off below", "3 K", "Stops before the pipes cool the tank."),
        new("House thermostat", "4 °C", "Two degrees above the frost limit."),
    ];

    private static Caution[] Cautions(Options o)
    {
        List<Caution> cautions = [];
        if (o.Barrels > 0 || o.Panels > 0)
            cautions.Add(new("weight of water", "A full barrel weighs 0.2 t and a 300 l tank a third of a tonne. Stand them on a slab that carries it, strap anything stacked, keep a lid on: a child can drown in a barrel. Ask the authority where your code asks for it."));
        if (o.Panels > 0)
            cautions.Add(new("hot water and steam", "A collector in the sun without flow passes 140 °C. Leave the open vent open, never put a valve between collector and vent, fill only when it is cool. Pressure vessels and their valves are work for a licensed person where your code says so."));
        if (o.Turning is "two-position" or "continuous")
            cautions.Add(new("wind", "Two square metres at 40 m/s push with about 2.5 kN. Keep out of the swing of the frame, stow it before a storm, have anchors and consent checked against your local code."));
        if (o.Heater > 0)
            cautions.Add(new("mains", "A wet floor and mains voltage kill. The circuit, its residual-current protection and the cable are work for a licensed electrician under your local wiring rules."));
        return [.. cautions];
    }

    private sealed record Options(bool Cover, int Barrels, int Panels, string Turning, int Heater);
}
