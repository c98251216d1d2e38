using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Small;
using DesignSearch.Season;
using DesignSearch.Season.Heaters;

namespace DesignSearch.Layouts.Systems.Heaters;

/// <summary>The stand-by heater of one layout.</summary>
internal sealed class DesignedHeater(Heater heater, HeaterNumbers numbers, bool switchesDirectly) : DesignedSystem
{
    private const double CoilW = 8;
    private const double LeastBandK = 0.1;

    public override bool IsReserve => true;

    public override double HeatsToC => numbers.SetPointC;

    public override IEnumerable<string> Words => [HeaterWords.Title(heater.Watts)];

    public override IEnumerable<Circuit> Circuits
    {
        get
        {
            var by = heater.HasThermostat ? HeaterWords.OwnThermostat : switchesDirectly ? HeaterWords.FrostThermostat : HeaterWords.Contactor;
            yield return new(HeaterWords.Device, heater.Volts, heater.Watts, 0, by, "") { BringsLead = true };
            if (!heater.HasThermostat && !switchesDirectly)
                yield return new(HeaterWords.CoilDevice, SupplyPlan.ControlVolts, CoilW, 0, HeaterWords.ControlBox, "");
        }
    }

    public override IEnumerable<Caution> Cautions => [HeaterWords.Fire, Dangers.CarbonMonoxide];

    public override IEnumerable<Upkeep> Upkeep => HeaterWords.Upkeep;

    public override Installation Install(Installation plant) => plant with { Heater = numbers };

    public override IEnumerable<Setting> Settings(Scenario scenario) => [HeaterWords.Thermostat(numbers.SetPointC, scenario.Greenhouse.FrostLimitC)];

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
        needs.Add(heater, 1, HeaterWords.Heater);
        if (heater.HasThermostat)
            return;
        var amperes = heater.Watts / heater.Volts;
        if (!switchesDirectly)
            needs.Small(SmallPartRole.Contactor, 1, HeaterWords.ContactorPart, SupplyPlan.MainsVolts, amperes);
        needs.Small(SmallPartRole.Thermostat, 1, HeaterWords.ThermostatPart, switchesDirectly ? SupplyPlan.MainsVolts : SupplyPlan.ControlVolts, switchesDirectly ? amperes : 0);
    }

    public override void Draw(SchemeSketch sketch)
    {
        var warm = sketch.Put(HeaterWords.Heater, HeaterWords.Device, Symbol.Heater, Spot.House, heater.HasThermostat ? [Terminal.Power] : [Terminal.Power, Terminal.Told]);
        var thermostat = sketch.Put(HeaterWords.ThermostatPart, HeaterWords.FrostThermostat, Symbol.Thermostat, Spot.House, Terminal.Tells);
        var contactor = sketch.Put(HeaterWords.ContactorPart, HeaterWords.CoilDevice, Symbol.Relay, Spot.House, Terminal.Power, Terminal.Told, Terminal.Tells);
        sketch.Join(thermostat, Terminal.Tells, contactor ?? warm, Terminal.Told);
        sketch.Join(contactor, Terminal.Tells, warm, Terminal.Told);
    }
}
