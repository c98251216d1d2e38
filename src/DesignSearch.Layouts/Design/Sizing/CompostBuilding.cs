using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Physics;
using DesignSearch.Season.Compost;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>Compost heap, its coil, the pipe in the house and the pump.</summary>
internal static class CompostBuilding
{
    private const string System = "compost heap";

    // Film on a bare pipe in the house, radiation included (estimate), roughness of plastic pipe, a third more for bends.
    private const double PipeFilm = 9.5;
    private const double RoughnessM = 7e-6;
    private const double Fittings = 4.0 / 3;
    private const double WaterC = 30;

    public static (CompostNumbers Numbers, Pump? Pump) Build(Scenario scenario, Layout layout, Needs needs)
    {
        var parts = needs.Catalogue;
        if (!parts.TryFind<CompostMix>(layout["compost_mix"].Id, out var mix)
            || !parts.TryFind<CompostCoil>(layout["compost_coil"].Id, out var coil)
            || !parts.TryFind<Pump>(layout["compost_pump"].Id, out var pump))
            return (CompostNumbers.None, null);
        var (volume, length) = (layout["compost_m3"].Number, layout["compost_coil_m"].Number);
        needs.Add(mix, volume, System, "Its rotting is the heat; fresh for every season.", "in the open beside the house, away from walls that burn");
        var wrapped = parts.TryFind<CompostWrap>(layout["compost_wrap"].Id, out var wrap);
        if (wrapped)
            needs.Add(wrap!, CompostHeap.SurfaceM2(volume) * HouseBuilding.Cuts, System, "Keeps the core hot and the rain out; it must breathe.", "round the sides and over the top");
        needs.Add(coil, 2 * length * HouseBuilding.Cuts, System, "Takes the heat from the core and gives it to the house.", "half in the heap, half along the beds");
        needs.Add(pump, 1, System, "Moves the water round.", "inside the house, at the lowest place");
        needs.Small(SmallPartRole.Thermostat, 1, System, "Starts the pump when the air falls to its setting.", "at plant height, out of the sun", pump.Volts == 230 ? 230 : 24);
        needs.Small(SmallPartRole.TemperatureSensor, 1, System, "Stops the pump before the core is quenched.", "in the core of the heap");
        needs.Small(SmallPartRole.DifferenceController, 1, System, "Lets the pump run only while the core is warm.", "in the control box", pump.Volts == 230 ? 230 : 24);

        var flow = needs.Shelf.HeapFlow(pump, coil, length, () => PumpCurve.Of(pump).FlowM3PerS(0, q => PipeFriction.DropPa(q, coil.BoreMm / 1000, 2 * length * Fittings, RoughnessM, WaterC)) * WaterProperties.DensityKgPerM3(WaterC));
        var inHouse = PipeLoss.PerMetreK(1, coil.OuterMm / 1000, coil.OuterMm / 1000, PipeFilm) * length;
        var numbers = new CompostNumbers(
            volume,
            CompostHeap.LossWPerK(volume, wrap?.ResistanceM2KPerW ?? 0, scenario.Assumptions),
            volume * mix.DryKgPerM3 * mix.DegradableShare,
            mix.RatePerDay,
            mix.HeatJPerKg,
            CompostHeap.CoilWPerK(coil.WPerMK * length, inHouse, flow * Water.HeatJPerKgK),
            pump.Watts,
            layout["compost_set_c"].Number,
            layout["compost_rest_c"].Number);
        return (numbers, pump);
    }
}
