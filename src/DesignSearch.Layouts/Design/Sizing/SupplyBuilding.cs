using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>Mains and extra-low voltage: what must be brought to the greenhouse for what is chosen.</summary>
internal static class SupplyBuilding
{
    public const string System = "electrics";
    private const double ShortCableM = 5;
    private const double SpareLoad = 1.25;

    public static SupplyPlan? Build(Scenario scenario, Layout layout, SolarLoop? solar, Heater? heater, Pump? heapPump, Bench? bench, bool movesCover, Needs needs)
    {
        var circuits = CircuitBuilding.Of(scenario, solar, heater, heapPump, bench, movesCover, needs);
        if (circuits.Count == 0)
            return null;
        SupplyPlan Plan(bool mainsInHouse, Needs into)
        {
            var key = new SupplyKey(mainsInHouse, scenario.Site.MainsAtGreenhouse, scenario.Site.MainsCableM, layout["supply_w"].Number, layout["cable_mm2"].Number, layout["control_box"].Id, heater?.Id ?? "", circuits);
            var (plan, own) = needs.Shelf.Supply(key, k => Anew(k, layout["control_box"], heater, needs.Fresh()));
            into.AddAll(own);
            return plan;
        }

        // Where only low voltage is needed, it is brought from the dwelling or made beside the greenhouse from mains brought there: whichever costs less.
        if (scenario.Site.MainsAtGreenhouse || circuits.Exists(c => c.Volts >= SupplyPlan.MainsVolts))
            return Plan(true, needs);
        var (far, near) = (needs.Copy(), needs.Copy());
        var (farPlan, nearPlan) = (Plan(false, far), Plan(true, near));
        var takesFar = (far.Missing.Count, far.Price(scenario.Stock)).CompareTo((near.Missing.Count, near.Price(scenario.Stock))) <= 0;
        needs.TakeOver(takesFar ? far : near);
        return takesFar ? farPlan : nearPlan;
    }

    private static (SupplyPlan Plan, Needs Needs) Anew(SupplyKey key, ChoiceValue controlBox, Heater? heater, Needs needs)
    {
        var mains = key.Circuits.Where(c => c.Volts >= SupplyPlan.MainsVolts);
        var low = key.Circuits.Where(c => c.Volts < SupplyPlan.MainsVolts).GroupBy(c => c.Volts).OrderBy(g => g.Key).Select(g => (Volts: g.Key, Circuits: g.ToList())).ToList();
        var lines = low.Select(l => Line(key, l.Volts, l.Circuits, needs)).ToList();
        var inputs = lines.Select(l => new Circuit(FormattableString.Invariant($"supply of {l.Volts:0} V"), SupplyPlan.MainsVolts, l.Watts / (l.Supply?.Efficiency ?? 1), 0, "always on", "")
        {
            StartA = l.StartA * l.Volts / (l.Supply?.Efficiency ?? 1) / SupplyPlan.MainsVolts,
        }).ToList();
        if (lines.Count > 0)
            Box(controlBox, low.Sum(l => l.Circuits.Count(c => c.CableM > 0)), lines, key.MainsInHouse, needs);
        var all = mains.Concat(inputs).ToList();
        var running = all.Sum(c => c.RunningA);
        var plan = new SupplyPlan
        {
            MainsW = 0,
            MainsCircuits = [],
            MainsCable = null,
            MainsCableM = 0,
            Breaker = null,
            Lines = lines,
            DwellingA = running,
            DwellingStartA = running + all.Max(c => c.StartA - c.RunningA),
        };
        return (key.MainsInHouse ? Mains(key, plan, all, heater, needs) : plan, needs);
    }

    private static SupplyPlan Mains(SupplyKey key, SupplyPlan plan, List<Circuit> circuits, Heater? heater, Needs needs)
    {
        var hasMains = key.MainsAtGreenhouse;
        var watts = circuits.Sum(c => c.Watts);
        var amperes = watts / SupplyPlan.MainsVolts;
        var metres = hasMains ? ShortCableM : key.MainsCableM;
        Cable? Fitting(double length, double current) => needs.Shelf.MainsCables.FirstOrDefault(c => c.Cable.RatedA >= current && CableDrop.Volts(length, current, c.OhmPerM) <= CableDrop.UsualLimit * SupplyPlan.MainsVolts)?.Cable;
        var cable = Fitting(metres, amperes);
        needs.Pick(cable, $"a mains cable for {amperes:0.0} A over {metres:0} m", metres * HouseBuilding.Cuts, System, "Brings the mains, 5 % for cuts included; a licensed person lays and joins it.", hasMains ? "inside the greenhouse" : "in a duct from the dwelling to the greenhouse");
        if (!hasMains)
            needs.Small(SmallPartRole.Conduit, metres, System, "Protects the mains cable in the ground.", "from the dwelling to the greenhouse");
        var branches = circuits.Select(c => c.CableM > 0 ? c with { Cable = Fitting(c.CableM, c.RunningA) } : c).ToList();
        foreach (var branch in branches.Where(c => c.CableM > 0))
            needs.Pick(branch.Cable, $"a mains cable for {branch.RunningA:0.0} A over {branch.CableM:0} m", branch.CableM * HouseBuilding.Cuts, System, $"Joins the {branch.Device} to the mains box, 5 % for cuts included; licensed work.", "inside the greenhouse, apart from the low voltage");
        needs.Small(SmallPartRole.ResidualCurrentDevice, 1, System, "Cuts the mains on a small fault current; in a wet place it is what saves a life.", "in the mains box");
        var breaker = needs.Shelf.Breakers.FirstOrDefault(p => p.RatedA >= amperes && p.RatedA <= (cable?.RatedA ?? double.PositiveInfinity));
        needs.Pick(breaker, $"a circuit breaker for {amperes:0.0} A that is not above the cable's {cable?.RatedA ?? 0:0} A", 1, System, "Protects the mains cable; never above the cable's rating.", "in the mains box");
        needs.Small(SmallPartRole.ControlBox, 1, System, "Keeps water off the mains, apart from the low voltage.", "inside by the door, above splashes", SupplyPlan.MainsVolts);
        needs.Small(SmallPartRole.Gland, 2 + circuits.Count(c => c.CableM > 0 || c.Device is CircuitBuilding.StandbyHeater or CircuitBuilding.HeatedBench), System, "Seals each cable into its box.", "under the mains box");
        if (heater is { HasThermostat: false })
            Thermostat(heater, needs);
        return plan with { MainsW = watts, MainsCircuits = branches, MainsCable = cable, MainsCableM = metres, Breaker = breaker };
    }

    private static void Thermostat(Heater heater, Needs needs)
    {
        var amperes = heater.Watts / heater.Volts;
        var direct = CircuitBuilding.SwitchesDirectly(heater, needs);
        if (!direct)
            needs.Small(SmallPartRole.Contactor, 1, "stand-by heater", "Switches the heater, whose current is more than a thermostat bears; the coil is on low voltage.", "in the mains box", SupplyPlan.MainsVolts, amperes);
        needs.Small(SmallPartRole.Thermostat, 1, "stand-by heater", "Starts the heater when the air falls to its setting.", "at plant height, out of the sun", direct ? SupplyPlan.MainsVolts : 24, direct ? amperes : 0);
    }

    private static LowLine Line(SupplyKey key, double volts, List<Circuit> circuits, Needs needs)
    {
        var mainsInHouse = key.MainsInHouse;
        var bare = new LowLine(volts, mainsInHouse ? ShortCableM : key.MainsCableM, circuits);
        var least = key.SupplyW;
        var wanted = Math.Max(bare.Watts * SpareLoad, bare.StartA * volts);
        var supply = needs.Shelf.Supplies.FirstOrDefault(s => s.Volts == volts && s.Watts >= (least > 0 ? least : wanted - 1e-9));
        needs.Pick(supply, $"a supply of {volts:0} V for {(least > 0 ? least : wanted):0} W", 1, System, "Makes the safe low voltage for pumps, valves and drive; strong enough while a drive starts.", mainsInHouse ? "in a box of its own beside the mains box" : "in the dwelling, beside the fuse board");
        var line = CableChooser.Choose(bare with { Supply = supply }, key.CableMm2, needs);
        needs.Pick(line.Feeder, $"a cable for {line.RunningA:0.0} A at {volts:0} V over {line.FeederM:0} m with at most 5 % drop", line.FeederM * HouseBuilding.Cuts, System, "Brings the low voltage without losing more than a twentieth of it, 5 % for cuts included.", mainsInHouse ? "inside the greenhouse" : "from the dwelling to the greenhouse, in a duct apart from any mains");
        foreach (var branch in line.Circuits.Where(c => c.Cable is not null))
            needs.Add(branch.Cable!, branch.CableM * HouseBuilding.Cuts, System, FormattableString.Invariant($"Joins the {branch.Device} to the control box at {volts:0} V; 5 % for cuts included."), "from the control box to the device");
        var fuse = line.FuseA ?? line.RunningA;
        needs.Small(SmallPartRole.Fuse, 1, System, "Protects the cables; never above the thinnest cable's rating.", "right behind the supply", 0, fuse);
        return line;
    }

    private static void Box(ChoiceValue controlBox, int cables, List<LowLine> lines, bool mainsInHouse, Needs needs)
    {
        if (!mainsInHouse)
            needs.Small(SmallPartRole.Conduit, lines.Max(l => l.FeederM), System, "Protects the low-voltage cables in the ground.", "from the dwelling to the greenhouse, apart from any mains");
        needs.Chosen(controlBox, SmallPartRole.ControlBox, 1, System, "Keeps controls dry, apart from any mains.", "inside by the door, above splashes", 24);
        needs.Small(SmallPartRole.Gland, lines.Count + cables, System, "Seals each cable into its box.", "under the control box");
    }
}
