using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Small;
using DesignSearch.Season;
using DesignSearch.Season.Benches;

namespace DesignSearch.Layouts.Systems.Benches;

/// <summary>The bench of one layout.</summary>
internal sealed class DesignedBench(Bench bench, BenchNumbers numbers, bool switchesDirectly) : DesignedSystem
{
    private const double NearM = 3;

    // An electronic thermostat has a supply and a contact, one on the mains line, neutral and earth.
    private const int LowCores = 4;
    private const int MainsCores = 3;

    // No narrower than this where the length of the house allows; the height of a table (common practice, no source).
    private const double LeastDepthM = 0.6;
    private const double TableM = 0.8;

    // A fleece that does not close at the edge (own choice).
    private const double FleeceDoubt = 1.5;

    public override PlantPlace? Plants => BenchWords.Place;

    public override bool IsReserve => IsHeated;

    public override IEnumerable<string> Words => [BenchWords.Title(numbers.AreaM2, IsHeated)];

    public override IEnumerable<Circuit> Circuits => !IsHeated
        ? []
        :
        [
            new(BenchWords.Device, bench.Volts, numbers.PowerW, OnMains ? 0 : NearM, SwitchedBy, "")
            {
                BringsLead = OnMains,
                WantsOwnBreaker = OnMains,
            },
        ];

    public override IEnumerable<Caution> Cautions =>
        IsHeated ? [BenchWords.HeatInTheWet, BenchWords.FleeceFire, Dangers.CarbonMonoxide] : [];

    public override IEnumerable<Upkeep> Upkeep => BenchWords.Upkeep(IsHeated);

    public override IEnumerable<PlantDoubt> Doubts =>
    [
        new(
            new(BenchWords.Fleece, 1, 1, FleeceDoubt, BenchWords.FleeceWhy, BenchWords.LooseFleece),
            (plant, factor) => plant.Find<BenchNumbers>() is { } bench ? plant.With(bench with { FleeceWPerM2K = factor * numbers.FleeceWPerM2K }) : plant),
    ];

    private bool IsHeated => numbers.PowerW > 0;

    private string SwitchedBy => switchesDirectly ? BenchWords.Thermostat : BenchWords.Relay;

    private bool OnMains => bench.Volts >= SupplyPlan.MainsVolts;

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) =>
        BenchWords.Steps(numbers.SetPointC, bench.Volts, OnMains, ground);

    public override IEnumerable<LogColumn> Log => BenchWords.Log(IsHeated);

    public override Installation Install(Installation plant) => plant.With(numbers);

    public override IEnumerable<Check> Checks(Conditions conditions) => [BenchSystem.Enough.Found(true, 1, BenchWords.IsEnough(numbers.AreaM2))];

    public override IEnumerable<Dial> Dials(Scenario scenario) => BenchWords.Dials(IsHeated, numbers.SetPointC, scenario.Greenhouse.FrostLimitC);

    public override void List(Needs needs)
    {
        needs.Add(bench, numbers.AreaM2, IsHeated ? BenchWords.Heated : BenchWords.Unheated);
        if (!IsHeated)
            return;
        var load = Duty.Current(PlantState.DesignNight, numbers.PowerW / bench.Volts);
        var lead = new Lead(NearM, OnMains ? MainsCores : LowCores);
        if (switchesDirectly)
        {
            needs.Small(SmallPartRole.Thermostat, 1, BenchWords.ThermostatPart, [load], bench.Volts, lead);
            return;
        }

        var relay = needs.Shelf.Bearing(SmallPartRole.Relay, [load], bench.Volts);
        var coil = Duty.Current(PlantState.DesignNight, (relay?.Watts ?? 0) / bench.Volts);
        needs.Small(SmallPartRole.Thermostat, 1, BenchWords.ThermostatPart, [coil], bench.Volts, lead);
        needs.Small(SmallPartRole.Relay, 1, BenchWords.RelayPart, [load], bench.Volts);
    }

    // Along the length of the house, as deep as its area asks.
    public override IEnumerable<Body> Bodies(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var length = Math.Min(scenario.Greenhouse.LengthM, numbers.AreaM2 / LeastDepthM);
        return [new(BenchWords.Device, BodyShape.Table, 1, length, numbers.AreaM2 / length, TableM)];
    }

    public override void Draw(SchemeSketch sketch)
    {
        var bed = IsHeated
            ? sketch.Put(BenchWords.Heated, BenchWords.Device, Symbol.Heater, Spot.House, Terminal.Power, Terminal.Told)
            : sketch.Put(BenchWords.Unheated, BenchWords.Device, Symbol.Plain, Spot.House);
        var thermostat = sketch.PutTeller(BenchWords.ThermostatPart, BenchWords.Thermostat, Symbol.Thermostat);
        var relay = sketch.PutControl(BenchWords.RelayPart, BenchWords.RelayName, Symbol.Relay);
        sketch.Tell(thermostat, relay ?? bed);
        sketch.Tell(relay, bed);
    }
}
