using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>The devices of a layout that draw current.</summary>
internal static class CircuitBuilding
{
    /// <summary>Names of mains devices that bring their own lead into the mains box.</summary>
    public const string StandbyHeater = "stand-by heater", HeatedBench = "heated bench";

    private const double NearM = 3;
    private const double SmallLoadW = 8;
    private const double ControlVolts = 24;

    // A pump's motor may draw some three times its running current while it starts (common practice, no source).
    private const double PumpStart = 3;

    public static List<Circuit> Of(Scenario scenario, SolarLoop? solar, Heater? heater, Pump? heapPump, Bench? bench, bool movesCover, Needs needs)
    {
        var circuits = new List<Circuit>();
        void Add(string device, double volts, double watts, double metres, string by, string stops = "", double startA = 0)
        {
            if (volts <= 0 || watts <= 0)
                return;
            circuits.Add(new Circuit(device, volts, watts, metres, by, stops) { StartA = Math.Max(startA, watts / volts) });
        }

        if (heater is not null)
            Add(StandbyHeater, heater.Volts, heater.Watts, 0, heater.HasThermostat ? "its own thermostat" : SwitchesDirectly(heater, needs) ? "frost thermostat" : "contactor, its coil by the low-voltage thermostat");
        if (heater is { HasThermostat: false } && !SwitchesDirectly(heater, needs))
            Add("thermostat and coil of the heater's contactor", ControlVolts, SmallLoadW, 0, "control box");
        if (solar is not null)
        {
            Pump("collector pump", solar.Pump, "difference controller");
            if (solar.ReleasePump is { } pump)
                Pump("pump of the heat release", pump, "thermostat of the heat release");
            Add("fan of the heat release", solar.Release.Volts, solar.Release.FanWatts * (solar.Release.Unit == PartUnit.Metre ? 1 : solar.ReleaseCount), NearM, Relayed(solar) ? "thermostat of the heat release, through a relay" : "thermostat of the heat release");
            Add(solar.Protection.Method == FreezeMethod.Antifreeze ? "pump of the exchanger" : "drain valves", solar.Protection.Volts, solar.Protection.Watts, NearM, "difference controller");
            Drives(solar, scenario.Site.PipeRunM + NearM);
            Add("controllers, timers and sensors", ControlVolts, SmallLoadW, 0, "control box");
        }

        if (heapPump is not null)
            Pump("pump of the compost heap", heapPump, "thermostat of the house and one in the core");
        if (bench is { Volts: > 0 })
            Add(HeatedBench, bench.Volts, bench.WattsPerM2 * scenario.Greenhouse.BenchM2, bench.Volts < SupplyPlan.MainsVolts ? NearM : 0, BenchBuilding.SwitchesDirectly(bench.Volts, bench.WattsPerM2 * scenario.Greenhouse.BenchM2 / bench.Volts, needs) ? "thermostat under its fleece" : "relay, by the thermostat under the fleece");
        if (movesCover && needs.Shelf.Small(SmallPartRole.CoverMotor).FirstOrDefault(p => p.Volts == ControlVolts) is { } motor)
        {
            foreach (var side in new[] { "one side", "the other side" })
                Add("cover motor, " + side, motor.Volts, motor.Watts, scenario.Greenhouse.LengthM, "light sensor through a reversing interlock", "built-in limit switches at both ends; both directions can never be on together", motor.RatedA);
        }

        return circuits;

        void Pump(string device, Pump pump, string by) => Add(device, pump.Volts, pump.Watts, NearM, by, "", PumpStart * pump.Watts / pump.Volts);

        void Drives(SolarLoop of, double metres)
        {
            if (of.Drive is not { } drive)
                return;
            var by = of.Mount.Turning == TurningKind.TwoPosition ? "timer and light sensor through the reversing interlock" : "sun clock and light sensor through the reversing interlock";
            for (var f = 1; f <= of.Frames; f++)
                Add(of.Frames == 1 ? "drive of the frame" : FormattableString.Invariant($"drive of frame {f}"), drive.Volts, drive.Watts, metres, by, "a limit switch at each end in the motor's own circuit; both directions can never be on together", drive.StartCurrentA);
        }
    }

    /// <summary>Whether some mains thermostat bears the heater's current.</summary>
    public static bool SwitchesDirectly(Heater heater, Needs needs) =>
        needs.Shelf.Small(SmallPartRole.Thermostat).Any(p => p.Volts == SupplyPlan.MainsVolts && p.RatedA >= heater.Watts / heater.Volts);

    /// <summary>Whether one thermostat must switch a fan and a pump of different voltage.</summary>
    public static bool Relayed(SolarLoop solar) => solar.Release.FanWatts > 0 && solar.ReleasePump is { } pump && pump.Volts != solar.Release.Volts;
}
