using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;
using DesignSearch.Season;
using DesignSearch.Season.Gathering;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>A fan coil that brings the house's surplus by day into the tank: what that adds to a solar plant.</summary>
internal static class Gathering
{
    public static Installation Install(Installation plant, SolarLoop solar)
    {
        if (!solar.Gathers)
            return plant;
        // No exchanger takes more than its water carries, as with the release.
        var release = plant.Release;
        var most = Math.Min(release.ConductanceWPerK, release.FlowKgPerS * Physics.Water.HeatJPerKgK);
        return plant.With(new GatheringNumbers(most, release.ElectricW, solar.Dials.GatherAboveC));
    }

    public static void List(SolarLoop solar, double startA, Needs needs)
    {
        if (!solar.Gathers)
            return;
        var (switched, onMains) = (Duty.Current(PlantState.Running, startA), solar.ThermostatVolts >= SupplyPlan.MainsVolts);
        var lead = new Lead(SolarCircuits.NearM, onMains ? SolarContacts.MainsCores : SolarContacts.ThermostatCores);
        needs.Contact(SmallPartRole.Thermostat, 1, GatheringWords.Thermostat, switched, solar.ThermostatVolts, lead);
        needs.Contact(SmallPartRole.DifferenceController, 1, GatheringWords.Controller, switched, solar.ThermostatVolts, onMains ? lead : default);
        needs.Small(SmallPartRole.TemperatureSensor, 1, GatheringWords.TankSensor, [solar.Heat.Store, solar.Heat.StoreUnseen]);
        needs.Small(SmallPartRole.TemperatureSensor, 1, GatheringWords.AirSensor, [], 0, new Lead(SolarCircuits.NearM, SolarContacts.CoresOfProbe));
    }

    /// <summary>Draws what starts it, beside what starts the release.</summary>
    /// <param name="sketch">The scheme.</param>
    /// <param name="store">The tank.</param>
    /// <param name="switches">What the two thermostats of the release switch: relay, pump and fan.</param>
    public static void Draw(SchemeSketch sketch, Component? store, params ReadOnlySpan<Component?> switches)
    {
        var controller = sketch.PutControl(GatheringWords.Controller, GatheringWords.ControllerName, Symbol.Controller);
        if (controller is null)
            return;
        var top = sketch.PutControl(GatheringWords.TankSensor, GatheringWords.TankSensorName, Symbol.Sensor);
        sketch.Tell(store, top);
        sketch.Tell(top, controller);
        sketch.Tell(sketch.PutTeller(GatheringWords.AirSensor, GatheringWords.AirSensorName, Symbol.Sensor), controller);
        sketch.Tell(sketch.PutTeller(GatheringWords.Thermostat, GatheringWords.ThermostatName, Symbol.Thermostat), controller);
        foreach (var switched in switches)
            sketch.Tell(controller, switched);
    }

    public static IEnumerable<Dial> Dials(SolarLoop solar, Scenario scenario) =>
        solar.Gathers ? GatheringWords.Dials(solar.Dials.GatherAboveC, scenario.Assumptions[GatheringAssumptions.StartK]) : [];

    public static IEnumerable<CommissioningStep> Steps(SolarLoop solar, PaperGround ground) =>
        solar.Gathers ? GatheringWords.Steps(solar.Dials.GatherAboveC, ground) : [];

    /// <summary>Whether there is a fan to gather with.</summary>
    public static void Add(SolarLoop solar, List<Check> checks)
    {
        if (!solar.Gathers)
            return;
        var hasFan = solar.Release.FanWatts > 0;
        checks.Add(SolarRules.GatheringFan.Found(hasFan, hasFan ? 1 : -1, GatheringWords.Fan(hasFan)));
    }

    /// <summary>Whether it keeps clear of bought heat and of the vents.</summary>
    public static IEnumerable<Check> OfPlant(SolarLoop solar, BuiltLayout built)
    {
        if (!solar.Gathers)
            yield break;
        var (setC, band) = (solar.Dials.GatherAboveC, DayHeatBand.Of(built));
        yield return SolarRules.GatheringSet.Found(band.Holds(setC), band.Spare(setC), GatheringWords.Apart(setC, band.LeastC, band.MostC));
    }
}
