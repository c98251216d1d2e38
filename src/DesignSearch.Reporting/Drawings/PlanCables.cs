using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Reporting.Drawings;

/// <summary>Which cable goes where: read from the wiring table and from where the scheme's components stand.</summary>
internal sealed class PlanCables
{
    private readonly Scheme scheme;
    private readonly string heapSystem;
    private readonly string supplySystem;

    /// <summary>Reads a layout.</summary>
    public PlanCables(JudgedLayout layout)
    {
        scheme = layout.Scheme;
        var heap = layout.Site?.Bodies.FirstOrDefault(b => b.Shape == BodyShape.Round && SpotOf(b.Name) == Spot.Outdoors);
        Heap = heap;
        heapSystem = heap is null ? "-" : Component(heap.Name)?.System ?? "-";
        // What feeds others is the supply's, and so are its panels.
        supplySystem = scheme.Joints.Where(j => j.Medium == Medium.Current).Select(j => Component(j.From)?.System ?? "")
            .FirstOrDefault(s => s.Length > 0) ?? "-";
        var wires = layout.Wires.Where(w => w.CableM > 0 && !(w.EndsAtDevice && w.Volts == 0)).ToList();
        ToCollector = [.. wires.Where(w => Of(w) is { Spot: Spot.Outdoors } c && c.System != heapSystem && c.System != supplySystem)];
        ToHeap = [.. wires.Where(w => Of(w) is { Spot: Spot.Outdoors } c && c.System == heapSystem)];
    }

    /// <summary>The heap; null without one.</summary>
    public Body? Heap { get; }

    /// <summary>Cables to what stands at the collectors.</summary>
    public IReadOnlyList<Wire> ToCollector { get; }

    /// <summary>Cables to what stands at the heap.</summary>
    public IReadOnlyList<Wire> ToHeap { get; }

    /// <summary>The component that a row of the wiring table is about; null for a box, and for what is not drawn by itself.</summary>
    public Component? Of(Wire wire) => wire.Purpose is { } purpose
        ? scheme.Components.FirstOrDefault(c => c.Purpose == purpose)
        : Component(wire.Device);

    /// <summary>The row of the wiring table that a joint is; null where it has none.</summary>
    public static Wire? Of(Joint joint, JudgedLayout layout)
    {
        var names = layout.Bill.Where(l => joint.PartIds.Contains(l.PartId)).Select(l => l.Name).ToHashSet(StringComparer.Ordinal);
        return layout.Wires.FirstOrDefault(w => names.Contains(w.Cable) && Math.Abs(w.CableM - joint.LengthM) < 0.051);
    }

    /// <summary>The component of that name; null for none.</summary>
    public Component? Component(string name) => scheme.Components.FirstOrDefault(c => c.Name == name);

    private Spot? SpotOf(string name) => Component(name)?.Spot;
}
