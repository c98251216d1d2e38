using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;
using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Compost;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>A compost heap beside the house: its coil, the pipe in the house and the pump.</summary>
public sealed class CompostSystem : PlantSystem
{
    // Film on a bare pipe in the house, radiation included (estimate), roughness of plastic pipe, a third more for bends.
    private const double PipeFilm = 9.5;
    private const double RoughnessM = 7e-6;
    private const double Fittings = 4.0 / 3;
    private const double WaterC = 30;

    // A fresh heap may reach this; what lies in it or takes its water must bear it.
    private const double HottestHeapC = 70;

    /// <summary>Pipe and pump against a hot heap.</summary>
    public static CheckRule Heat { get; } = new("compost-heat", "pipe and pump bear a hot heap", "Common practice, no source: hot heaps reach 60 to 70 °C");

    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } = [CompostMix.Definition, CompostCoil.Definition, CompostWrap.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => CompostChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<AssumptionEntry> Assumptions => CompostAssumptions.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules { get; } = [Heat];

    /// <inheritdoc/>
    public override bool NeedsLowVoltage(IChoices choices) =>
        choices.Has(CompostChoices.Mix) && choices.Get(CompostChoices.HeapPump) is { } pump && pump.Volts < SupplyPlan.MainsVolts;

    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        var layout = task.Layout;
        if (layout.Get(CompostChoices.Mix) is not { } mix || layout.Get(CompostChoices.Coil) is not { } coil || layout.Get(CompostChoices.HeapPump) is not { } pump)
            return null;
        var (volume, length, wrap) = (layout.Get(CompostChoices.VolumeM3), layout.Get(CompostChoices.CoilM), layout.Get(CompostChoices.Wrap));
        var flow = task.Shelf.Once(_ => new HeapFlows()).KgPerS(pump, coil, length);
        var inHouse = PipeLoss.PerMetreK(1, coil.OuterMm / 1000, coil.OuterMm / 1000, PipeFilm) * length;
        var numbers = new CompostNumbers(
            volume,
            CompostHeap.LossWPerK(volume, wrap?.ResistanceM2KPerW ?? 0, task.Scenario.Assumptions),
            volume * mix.DryKgPerM3 * mix.DegradableShare,
            mix.RatePerDay,
            mix.HeatJPerKg,
            CompostHeap.CoilWPerK(coil.WPerMK * length, inHouse, flow * Water.HeatJPerKgK),
            pump.Watts,
            layout.Get(CompostChoices.SetC),
            layout.Get(CompostChoices.RestC));
        return new DesignedHeap(mix, coil, wrap, pump, volume, length, numbers);
    }

    internal static Check HeatCheck(CompostCoil coil, Pump pump)
    {
        var weakest = Math.Min(coil.MaxTemperatureC, pump.MaxTemperatureC);
        return Heat.Found(weakest >= HottestHeapC, (weakest / HottestHeapC) - 1, CompostWords.Heat(HottestHeapC, weakest));
    }

    // Worked out once for each pump, coil and length.
    private sealed class HeapFlows
    {
        private const int Most = 8192;

        private readonly Memory<(string Pump, string Coil, double LengthM), double> known = new(Most);

        public double KgPerS(Pump pump, CompostCoil coil, double lengthM) => known.Of((pump.Id, coil.Id, lengthM), _ =>
        {
            double DropPa(double m3PerS) => PipeFriction.DropPa(m3PerS, coil.BoreMm / 1000, 2 * lengthM * Fittings, RoughnessM, WaterC);
            return PumpCurve.Of(pump).FlowM3PerS(0, DropPa) * WaterProperties.DensityKgPerM3(WaterC);
        });
    }
}
