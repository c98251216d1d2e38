using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.HeatPumps;
using DesignSearch.Season;
using DesignSearch.Season.HeatPumps;

namespace DesignSearch.Layouts.Systems.HeatPumps;

/// <summary>The heat pump of one layout.</summary>
/// <param name="pump">The unit.</param>
/// <param name="wishC">What was wished of its thermostat [°C].</param>
/// <param name="numbers">Its numbers, with the setting that it can hold.</param>
internal sealed class DesignedHeatPump(HeatPump pump, double wishC, HeatPumpNumbers numbers) : DesignedSystem
{
    // From the mains box to the outdoor unit (common practice, no source).
    private const double RunM = 5;

    // What a margin counts as plenty.
    private const double PlentyK = 10;

    // Field tests find a fifth less than sheets (own choice), and ice or wind stops a unit some kelvins early.
    private const double Worse = 0.8;
    private const double EarlierK = 5;

    public override bool IsReserve => true;

    public override double HeatsToC => numbers.SetPointC;

    public override IEnumerable<string> Words => [HeatPumpWords.Title(pump.HeatAt7W, numbers.SetPointC)];

    public override IEnumerable<Circuit> Circuits =>
        [
            new(HeatPumpWords.Device, pump.Volts, pump.Volts * pump.MostA, RunM, HeatPumpWords.Switch, "")
            {
                WantsOwnBreaker = true,
                IsJoinedInPrice = true,
            },
        ];

    public override IEnumerable<Caution> Cautions => HeatPumpWords.Cautions(pump.Refrigerant).Append(Dangers.CarbonMonoxide);

    public override IEnumerable<Upkeep> Upkeep => HeatPumpWords.Upkeep;

    public override IEnumerable<PlantDoubt> Doubts =>
    [
        new(
            new(HeatPumpWords.Current, 1, Worse, 1, HeatPumpWords.MakerWhy, _ => HeatPumpWords.LessEfficient),
            (plant, factor) => Changed(plant, n => n with { Cop = numbers.Cop.Times(factor) })),
        new(
            new(HeatPumpWords.Heat, 1, Worse, 1, HeatPumpWords.MakerWhy, _ => HeatPumpWords.LessHeat),
            (plant, factor) => Changed(plant, n => n with { HeatW = numbers.HeatW.Times(factor) })),
        new(
            new(HeatPumpWords.StoppingCold, 0, 0, EarlierK, HeatPumpWords.IceWhy, HeatPumpWords.StopsEarlier),
            (plant, kelvin) => Changed(plant, n => n with { LeastOutdoorC = numbers.LeastOutdoorC + kelvin })),
    ];

    private static Installation Changed(Installation plant, Func<HeatPumpNumbers, HeatPumpNumbers> change) =>
        plant.Find<HeatPumpNumbers>() is { } pump ? plant.With(change(pump)) : plant;

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) => HeatPumpWords.Steps(numbers.SetPointC, ground);

    public override IEnumerable<EnquiryFact> Enquiry(PaperGround ground) => HeatPumpWords.Enquiry(pump, numbers.SetPointC);

    public override IEnumerable<LogColumn> Log => [HeatPumpWords.Meter];

    public override Installation Install(Installation plant) => plant.With(numbers);

    public override IEnumerable<Dial> Dials(Scenario scenario) =>
        HeatPumpWords.Dials(numbers.SetPointC, wishC, scenario.Greenhouse.FrostLimitC);

    public override IEnumerable<Check> Checks(Conditions conditions)
    {
        var spare = conditions.LowestOutsideC - pump.LeastOutdoorC;
        var cold = HeatPumpWords.Cold(pump.LeastOutdoorC, conditions.LowestOutsideC);
        return [HeatPumpSystem.Cold.Found(true, Math.Clamp(spare / PlentyK, 0, 1), cold)];
    }

    public override void List(Needs needs) => needs.Add(pump, 1, HeatPumpWords.Purpose);

    public override void Draw(SchemeSketch sketch) =>
        sketch.Put(HeatPumpWords.Purpose, HeatPumpWords.Device, Symbol.Plain, Spot.Skin, Terminal.Power);
}
