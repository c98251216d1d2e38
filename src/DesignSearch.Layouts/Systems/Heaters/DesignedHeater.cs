using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Small;
using DesignSearch.Season;
using DesignSearch.Season.Heaters;

namespace DesignSearch.Layouts.Systems.Heaters;

/// <summary>The stand-by heater of one layout.</summary>
internal sealed class DesignedHeater(Heater heater, HeaterNumbers numbers, bool switchesDirectly) : DesignedSystem
{
    private const double NearM = 3;

    // An electronic thermostat has a supply and a contact, one on the mains line, neutral and earth.
    private const int LowCores = 4;
    private const int MainsCores = 3;
    private const double LeastBandK = 0.1;

    public override bool IsReserve => true;

    public override double HeatsToC => numbers.SetPointC;

    public override IEnumerable<string> Words => [HeaterWords.Title(heater.Watts)];

    public override IEnumerable<Circuit> Circuits
    {
        get
        {
            var by = switchesDirectly ? HeaterWords.FrostThermostat : HeaterWords.Contactor;
            by = heater.HasThermostat ? HeaterWords.OwnThermostat : by;
            yield return new(HeaterWords.Device, heater.Volts, heater.Watts, 0, by, HeaterWords.Stops)
            {
                BringsLead = true,
                WantsOwnBreaker = true,
            };
        }
    }

    public override IEnumerable<Caution> Cautions => [HeaterWords.Fire, Dangers.CarbonMonoxide];

    public override IEnumerable<Upkeep> Upkeep => HeaterWords.Upkeep;

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) =>
        HeaterWords.Steps(numbers.SetPointC, numbers.BandK, (heater.HasThermostat, ThermostatVolts), ground);

    public override IEnumerable<LogColumn> Log => [HeaterWords.Meter];

    private double ThermostatVolts => heater.HasThermostat || switchesDirectly ? heater.Volts : SupplyPlan.ControlVolts;

    public override Installation Install(Installation plant) => plant with { Heater = numbers };

    public override IEnumerable<Dial> Dials(Scenario scenario) =>
    [
        new(
            heater.HasThermostat ? HeaterWords.Heater : HeaterWords.ThermostatPart,
            HeaterWords.Thermostat(numbers.SetPointC, scenario.Greenhouse.FrostLimitC)),
    ];

    // The season holds a set point evenly; a real thermostat swings about it. One set below the limit anyhow shows its frost itself.
    public override IEnumerable<Check> Checks(Conditions conditions)
    {
        var limit = conditions.Scenario.Greenhouse.FrostLimitC;
        if (numbers.PowerW <= 0 || numbers.SetPointC < limit || conditions.PlantsStandApart)
            yield break;
        var coldest = numbers.SetPointC - (numbers.BandK / 2);
        yield return HeaterSystem.Band.Found(
            coldest >= limit - 1e-9,
            (coldest - limit) / Math.Max(numbers.BandK, LeastBandK),
            HeaterWords.Band(numbers.SetPointC, numbers.BandK, coldest, limit));
    }

    public override void List(Needs needs)
    {
        var load = Duty.Current(PlantState.DesignNight, heater.Watts / heater.Volts);
        var (onMains, onLow) = (new Lead(NearM, MainsCores), new Lead(NearM, LowCores));
        needs.Add(heater, 1, HeaterWords.Heater);
        needs.Small(SmallPartRole.HighLimit, 1, HeaterWords.HighLimit, [load], SupplyPlan.MainsVolts, onMains);
        if (heater.HasThermostat)
            return;
        if (switchesDirectly)
        {
            needs.Small(SmallPartRole.Thermostat, 1, HeaterWords.ThermostatPart, [load], SupplyPlan.MainsVolts, onMains);
            return;
        }

        var coil = (needs.Shelf.Bearing(SmallPartRole.Contactor, [load], SupplyPlan.MainsVolts)?.Watts ?? 0) / SupplyPlan.ControlVolts;
        needs.Small(SmallPartRole.Contactor, 1, HeaterWords.ContactorPart, [load], SupplyPlan.MainsVolts);
        var switches = Duty.Current(PlantState.DesignNight, coil);
        needs.Contact(SmallPartRole.Thermostat, 1, HeaterWords.ThermostatPart, switches, SupplyPlan.ControlVolts, onLow);
    }

    public override void Draw(SchemeSketch sketch)
    {
        var warm = sketch.Put(HeaterWords.Heater, HeaterWords.Device, Symbol.Heater, Spot.House, Terminal.Power, Terminal.Told);
        var cutOut = sketch.PutTeller(HeaterWords.HighLimit, HeaterWords.HighLimitName, Symbol.LimitSwitch);
        sketch.Tell(cutOut, warm);
        var thermostat = sketch.PutTeller(HeaterWords.ThermostatPart, HeaterWords.FrostThermostat, Symbol.Thermostat);
        var contactor = sketch.PutControl(HeaterWords.ContactorPart, HeaterWords.ContactorName, Symbol.Relay);
        sketch.Tell(thermostat, contactor ?? warm);
        sketch.Tell(contactor, warm);
    }
}
