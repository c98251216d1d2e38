using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
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

    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } =
        [CompostMix.Definition, CompostCoil.Definition, CompostWrap.Definition, PipeInsulation.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => CompostChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<AssumptionEntry> Assumptions => CompostAssumptions.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules => CompostRules.All;

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
        var (outdoor, glycol) = (task.Scenario.Site.HeapPipeM, layout.Get(CompostChoices.GlycolPercent) / 100);
        var flow = task.Shelf.Once(_ => new HeapFlows()).KgPerS(pump, coil, length + outdoor, glycol);
        var inHouse = PipeLoss.PerMetreK(1, coil.OuterMm / 1000, coil.OuterMm / 1000, PipeFilm) * length;
        var numbers = new CompostNumbers(
            volume,
            CompostHeap.LossWPerK(volume, wrap?.ResistanceM2KPerW ?? 0, task.Scenario.Assumptions),
            volume * mix.DryKgPerM3 * mix.DegradableShare,
            mix.RatePerDay,
            mix.HeatJPerKg,
            CompostHeap.CoilWPerK(coil.WPerMK * length, inHouse, flow * PropyleneGlycol.HeatJPerKgK(glycol, Water.HeatJPerKgK)),
            pump.Watts,
            layout.Get(CompostChoices.SetC),
            layout.Get(CompostChoices.RestC))
        {
            BuiltDays = layout.Get(CompostChoices.BuiltDays),
        };
        var hire = task.Shelf.Cheapest(SmallPartRole.HeapHire)?.Info.LabourHours ?? 0;
        return new DesignedHeap(new HeapPlan
        {
            Mix = mix,
            Coil = coil,
            Wrap = wrap,
            Pump = pump,
            Sleeve = Sleeve(task.Shelf, coil),
            VolumeM3 = volume,
            CoilM = length,
            OutdoorM = outdoor,
            GlycolShare = glycol,
            BuildHours = hire + (volume * mix.Info.LabourHours),
            Numbers = numbers,
        });
    }

    // The cheapest that stands weather and a hot heap's water.
    private static PipeInsulation? Sleeve(PartShelf shelf, CompostCoil coil)
    {
        foreach (var sleeve in shelf.Of<PipeInsulation>())
        {
            var fits = coil.OuterMm >= sleeve.InnerFromMm && coil.OuterMm <= sleeve.InnerToMm;
            if (fits && sleeve.IsOutdoor && sleeve.MaxTemperatureC >= HeapPlan.HottestC)
                return sleeve;
        }

        return null;
    }

    // Worked out once for each pump, coil, length and mix.
    private sealed class HeapFlows
    {
        private const int Most = 8192;

        private readonly Memory<(string Pump, string Coil, double LengthM, double Glycol), double> known = new(Most);

        public double KgPerS(Pump pump, CompostCoil coil, double lengthM, double glycol) =>
            known.Of((pump.Id, coil.Id, lengthM, glycol), _ =>
            {
                var rubs = PropyleneGlycol.FrictionOverWater(glycol);
                double DropPa(double m3PerS) =>
                    rubs * PipeFriction.DropPa(m3PerS, coil.BoreMm / 1000, 2 * lengthM * Fittings, RoughnessM, WaterC);
                return PumpCurve.Of(pump).FlowM3PerS(0, DropPa) * WaterProperties.DensityKgPerM3(WaterC);
            });
    }
}
