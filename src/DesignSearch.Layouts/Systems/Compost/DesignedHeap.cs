using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Season;
using DesignSearch.Season.Compost;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>The heap of one layout.</summary>
internal sealed class DesignedHeap(HeapPlan heap) : DesignedSystem
{
    // Between a heap that hardly starts and a hot one: measured heaps differ by more than this.
    private const double LeastHeat = 0.3;
    private const double MostHeat = 1.5;

    public override bool LacksParts => heap.Sleeve is null;

    public override double HeatsToC => Numbers.SetPointC;

    public override IEnumerable<string> Words => [CompostWords.Title(heap.VolumeM3, heap.CoilM)];

    public override IEnumerable<Circuit> Circuits => [HeapListing.Circuit(heap)];

    public override IEnumerable<Caution> Cautions => CompostWords.Cautions(heap);

    public override IEnumerable<Upkeep> Upkeep => CompostWords.Upkeep(heap.BuildHours);

    public override IEnumerable<PlantDoubt> Doubts =>
    [
        new(
            new(CompostWords.HeapHeat, 1, LeastHeat, MostHeat, CompostWords.HeatWhy, CompostWords.OtherHeat),
            (plant, factor) => plant.With(Numbers with { HeatJPerKg = factor * Numbers.HeatJPerKg })),
    ];

    private CompostNumbers Numbers => heap.Numbers;

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) => CompostWords.Steps(heap, ground);

    public override IEnumerable<LogColumn> Log => [CompostWords.CoreColumn];

    public override Installation Install(Installation plant) => plant.With(Numbers);

    public override IEnumerable<Check> Checks(Conditions conditions) => HeapChecks.Of(heap, conditions);

    public override IEnumerable<Check> ListChecks(Conditions conditions, BuiltLayout built) =>
        HeapChecks.Alone(conditions, built) is { } alone ? [alone] : [];

    public override IEnumerable<Dial> Dials(Scenario scenario) => CompostWords.Dials(heap);

    public override void List(Needs needs) => HeapListing.List(heap, needs);

    public override IEnumerable<Body> Bodies(Scenario scenario)
    {
        var (width, height) = (2 * Math.Sqrt(CompostHeap.GroundM2(heap.VolumeM3) / Math.PI), CompostHeap.HeightM(heap.VolumeM3));
        return [new(HeapSchemeWords.Heap, BodyShape.Round, 1, width, width, height)];
    }

    public override void Draw(SchemeSketch sketch) => HeapScheme.Draw(heap, sketch);
}
