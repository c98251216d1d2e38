using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.DayStore;
using DesignSearch.Parts.Small;
using DesignSearch.Season;
using DesignSearch.Season.DayStore;

namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>The day-heat store of one layout.</summary>
/// <param name="pipe">Its pipe.</param>
/// <param name="fan">Its fan.</param>
/// <param name="laid">How the pipes lie.</param>
/// <param name="depthM">How deep they lie [m].</param>
/// <param name="flowM3PerS">Air through all of them [m³/s].</param>
/// <param name="numbers">Its numbers.</param>
internal sealed class DesignedDayStore(EarthPipe pipe, StoreFan fan, PipeField laid, double depthM, double flowM3PerS, DayStoreNumbers numbers)
    : DesignedSystem
{
    private const double NearM = 3;

    // An electronic thermostat has a supply and a contact, one on the mains line, neutral and earth.
    private const int LowCores = 4;
    private const int MainsCores = 3;
    private const double LeastGap = 1.5;
    private const double SlowMPerS = 0.5;
    private const double FastMPerS = 4;

    // Soil of 0.5 and of 2.1 W/(m·K) beside the usual: what they answer to the day's wave (docs/model.md, "Day-heat store").
    private const double DrySoil = 0.5;
    private const double WetSoil = 1.3;
    private const double Slime = 2.0 / 3;

    public override double HeatsToC => numbers.SetPointC;

    public override IEnumerable<string> Words => [DayStoreWords.Title(laid)];

    public override IEnumerable<Circuit> Circuits =>
        [new(DayStoreWords.Device, fan.Volts, fan.Watts, NearM, DayStoreWords.Switch, "")];

    public override IEnumerable<Caution> Cautions => DayStoreWords.Cautions(OnMains);

    public override IEnumerable<Upkeep> Upkeep => DayStoreWords.Upkeep;

    public override IEnumerable<PlantDoubt> Doubts =>
    [
        new(new(DayStoreWords.Soil, 1, DrySoil, WetSoil, DayStoreWords.SoilWhy, DayStoreWords.OtherSoil), (plant, factor) => Changed(plant, Soil(factor))),
        new(
            new(DayStoreWords.PipeHeat, 1, Slime, 1, DayStoreWords.SlimeWhy, _ => DayStoreWords.Slime),
            (plant, factor) => Changed(plant, n => n with { AirWPerK = factor * numbers.AirWPerK })),
    ];

    private bool OnMains => fan.Volts >= SupplyPlan.MainsVolts;

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) =>
        DayStoreWords.Steps(numbers.ChargeAboveC, numbers.SetPointC, ground);

    public override IEnumerable<LogColumn> Log => [DayStoreWords.SoilColumn];

    public override Installation Install(Installation plant) => plant.With(numbers);

    public override IEnumerable<Dial> Dials(Scenario scenario) =>
        DayStoreWords.Dials(
            numbers.ChargeAboveC,
            numbers.SetPointC,
            scenario.Greenhouse.FrostLimitC,
            scenario.Assumptions[DayStoreAssumptions.StartK]);

    public override IEnumerable<Check> Checks(Conditions conditions)
    {
        var gap = laid.SpacingM * 1000 / pipe.OuterMm;
        yield return DayStoreRules.Spacing.Found(
            laid.Count == 1 || gap >= LeastGap, gap / LeastGap - 1, DayStoreWords.Spacing(laid, pipe.OuterMm, LeastGap));
        var speed = EarthPipeAir.SpeedMPerS(pipe.BoreMm / 1000, flowM3PerS / laid.Count);
        var inside = Math.Min(speed / SlowMPerS - 1, 1 - speed / FastMPerS);
        yield return DayStoreRules.Speed.Found(true, Math.Clamp(inside, 0, 1), DayStoreWords.Speed(speed, SlowMPerS, FastMPerS));
        if (conditions.Outcomes.Count > 0)
            yield return Worth(conditions);
    }

    public override IEnumerable<Check> ListChecks(Conditions conditions, BuiltLayout built)
    {
        var (setC, band) = (numbers.ChargeAboveC, DayHeatBand.Of(built));
        yield return DayStoreRules.Apart.Found(band.Holds(setC), band.Spare(setC), DayStoreWords.Apart(setC, band.LeastC, band.MostC));
    }

    public override void List(Needs needs)
    {
        var volts = OnMains ? SupplyPlan.MainsVolts : SupplyPlan.ControlVolts;
        needs.Add(pipe, laid.TotalM * NeededPart.Cuts, DayStoreWords.Pipe);
        var header = needs.Shelf.Of<EarthHeader>().FirstOrDefault(h => h.PipesMost >= laid.Count);
        needs.Pick(header, DayStoreWords.WantedHeader(laid.Count), 1, DayStoreWords.Header);
        needs.Add(fan, 1, DayStoreWords.Fan);
        var load = Duty.Current(PlantState.Running, fan.Watts / fan.Volts);
        var lead = new Lead(NearM, OnMains ? MainsCores : LowCores);
        needs.Contact(SmallPartRole.Thermostat, 2, DayStoreWords.Thermostats, load, volts, lead);
        needs.Small(SmallPartRole.TemperatureSensor, 1, DayStoreWords.SoilSensor);
        needs.Contact(SmallPartRole.DifferenceController, 1, DayStoreWords.Controller, load, volts);
    }

    private static Installation Changed(Installation plant, Func<DayStoreNumbers, DayStoreNumbers> change) =>
        plant.Find<DayStoreNumbers>() is { } store ? plant.With(change(store)) : plant;

    private Func<DayStoreNumbers, DayStoreNumbers> Soil(double factor) => store => store with
    {
        RingStoreJPerK = factor * numbers.RingStoreJPerK,
        RingSoilWPerK = factor * numbers.RingSoilWPerK,
    };

    private Check Worth(Conditions conditions)
    {
        var (books, scenario) = (conditions.Outcomes.Select(o => o.Books).ToList(), conditions.Scenario);
        var soil = SoilRing.AdmittanceWPerMK(
            scenario.Assumptions.SoilConductivityWPerMK,
            scenario.Assumptions.SoilVolumetricCapacityJPerM3K,
            pipe.OuterMm / 2000,
            laid.SpacingM);
        var judged = new DayStoreJudgement(
            books.Sum(b => b.Of(DayStoreFlows.Charge)),
            books.Sum(b => b.Of(DayStoreFlows.Return)),
            books.Sum(b => b.Of(DayStoreFlows.Fan)),
            scenario.Greenhouse.FloorM2,
            conditions.Outcomes.Sum(o => o.SeasonHours) / 24.0,
            numbers.AirWPerK / laid.TotalM,
            soil.Magnitude);
        return DayStoreRules.Worth.Found(
            true, Math.Clamp(judged.Cop / DayStoreJudgement.LeastCop - 1, 0, 1), DayStoreWords.Worth(judged));
    }

    public override IEnumerable<Body> Bodies(Scenario scenario) =>
    [
        new(DayStoreWords.PipesName, BodyShape.Buried, laid.Count, laid.Count * laid.SpacingM, laid.LengthM, pipe.OuterMm / 1000)
        {
            LiftM = -depthM,
        },
    ];

    public override void Draw(SchemeSketch sketch)
    {
        var air = sketch.There(DayStoreWords.HouseAir, Spot.House, Terminal.AirOut, Terminal.AirIn);
        var blower = sketch.Put(
            DayStoreWords.Fan, DayStoreWords.Device, Symbol.Fan, Spot.House,
            Terminal.AirIn, Terminal.AirOut, Terminal.Power, Terminal.Told);
        var field = sketch.Put(DayStoreWords.Pipe, DayStoreWords.PipesName, Symbol.Plain, Spot.House, Terminal.AirIn, Terminal.AirOut);
        var control = sketch.PutControl(DayStoreWords.Controller, DayStoreWords.ControllerName, Symbol.Controller);
        sketch.Add(field, DayStoreWords.Header);
        sketch.Join(air, Terminal.AirOut, blower, Terminal.AirIn);
        sketch.Join(blower, Terminal.AirOut, field, Terminal.AirIn);
        sketch.Join(field, Terminal.AirOut, air, Terminal.AirIn);
        sketch.Tell(sketch.PutTeller(DayStoreWords.Thermostats, DayStoreWords.ThermostatsName, Symbol.Thermostat), control);
        sketch.Tell(sketch.PutTeller(DayStoreWords.SoilSensor, DayStoreWords.SoilSensorName, Symbol.Sensor), control);
        sketch.Tell(control, blower);
    }
}
