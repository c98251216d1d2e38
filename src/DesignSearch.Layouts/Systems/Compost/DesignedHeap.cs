using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Season;
using DesignSearch.Season.Compost;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>The heap of one layout.</summary>
internal sealed class DesignedHeap(CompostMix mix, CompostCoil coil, CompostWrap? wrap, Pump pump, double volumeM3, double lengthM, CompostNumbers numbers) : DesignedSystem
{
    private const double NearM = 3;

    // An electronic thermostat has a supply and a contact, one on the mains line, neutral and earth.
    private const int LowCores = 4;
    private const int MainsCores = 3;

    // Between a heap that hardly starts and a hot one: measured heaps differ by more than this.
    private static readonly double[] HeapHeat = [0.3, 1.5];

    private double ControlVolts => pump.Volts >= SupplyPlan.MainsVolts ? SupplyPlan.MainsVolts : SupplyPlan.ControlVolts;

    public override double HeatsToC => numbers.SetPointC;

    public override IEnumerable<string> Words => [CompostWords.Title(volumeM3, lengthM)];

    public override IEnumerable<Circuit> Circuits => [Circuit.OfPump(CompostWords.PumpDevice, pump.Volts, pump.Watts, NearM, CompostWords.PumpSwitch)];

    public override IEnumerable<Caution> Cautions => CompostWords.Cautions(mix.Moisture);

    public override IEnumerable<Upkeep> Upkeep => CompostWords.Upkeep;

    public override IEnumerable<SensitivityCase> Doubts =>
        HeapHeat.Select(f => new SensitivityCase(CompostWords.OtherHeat(f), plant => plant.With(numbers with { HeatJPerKg = f * numbers.HeatJPerKg })));

    public override Installation Install(Installation plant) => plant.With(numbers);

    public override IEnumerable<Check> Checks(Conditions conditions) => [CompostSystem.HeatCheck(coil, pump)];

    public override IEnumerable<Setting> Settings(Scenario scenario) => CompostWords.Settings(numbers.SetPointC, numbers.RestBelowC);

    public override void List(Needs needs)
    {
        needs.Add(mix, volumeM3, CompostWords.Mix);
        if (wrap is not null)
            needs.Add(wrap, CompostHeap.SurfaceM2(volumeM3) * NeededPart.Cuts, CompostWords.Wrap);
        needs.Add(coil, 2 * lengthM * NeededPart.Cuts, CompostWords.Coil);
        needs.Add(pump, 1, CompostWords.Pump);
        var start = Duty.Current(PlantState.Running, Circuit.OfPump("", pump.Volts, pump.Watts, 0, "").StartA);
        var cores = ControlVolts >= SupplyPlan.MainsVolts ? MainsCores : LowCores;
        needs.Contact(SmallPartRole.Thermostat, 1, CompostWords.Thermostat, start, ControlVolts, new Lead(NearM, cores));
        needs.Small(SmallPartRole.TemperatureSensor, 1, CompostWords.CoreSensor);
        needs.Contact(SmallPartRole.DifferenceController, 1, CompostWords.CoreController, start, ControlVolts);
    }

    public override void Draw(SchemeSketch sketch)
    {
        sketch.Add(sketch.Put(CompostWords.Mix, CompostWords.HeapName, Symbol.Plain, Spot.Outdoors), CompostWords.Wrap);
        var pipe = sketch.Put(CompostWords.Coil, CompostWords.CoilName, Symbol.Plain, Spot.Outdoors, Terminal.Inlet, Terminal.Outlet);
        var mover = sketch.Put(CompostWords.Pump, CompostWords.PumpDevice, Symbol.Pump, Spot.House, Terminal.Inlet, Terminal.Outlet, Terminal.Power, Terminal.Told);
        var control = sketch.Put(CompostWords.CoreController, CompostWords.ControllerName, Symbol.Controller, Spot.House, Terminal.Told, Terminal.Tells);
        sketch.Line(mover, pipe, mover);
        sketch.Join(sketch.Put(CompostWords.Thermostat, CompostWords.ThermostatName, Symbol.Thermostat, Spot.House, Terminal.Tells), Terminal.Tells, control, Terminal.Told);
        sketch.Join(sketch.Put(CompostWords.CoreSensor, CompostWords.CoreSensorName, Symbol.Sensor, Spot.Outdoors, Terminal.Tells), Terminal.Tells, control, Terminal.Told);
        sketch.Join(control, Terminal.Tells, mover, Terminal.Told);
    }
}
