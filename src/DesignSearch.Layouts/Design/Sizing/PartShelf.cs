using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>The parts of a catalogue that follow from others, sorted once at one level of prices: the first that serves is the one to take. Safe to use from several threads.</summary>
internal sealed class PartShelf
{
    private const double MainsRating = 400;

    private const int MostSupplies = 8192;

    private static readonly ConditionalWeakTable<Catalogue, ConcurrentDictionary<PriceLevel, PartShelf>> Made = [];

    private readonly Dictionary<SmallPartRole, SmallPart[]> small;
    private readonly ConcurrentDictionary<FlowKey, LoopFlow> flows = new();
    private readonly ConcurrentDictionary<SupplyKey, (SupplyPlan Plan, Needs Needs)> supplies = new();
    private readonly ConcurrentDictionary<(string Pump, string Coil, double LengthM), double> heapFlows = new();

    private int suppliesMade;

    private PartShelf(Catalogue catalogue, PriceLevel level)
    {
        T[] Cheapest<T>(IEnumerable<T> parts) where T : IPart => [.. parts.OrderBy(p => p.Info.PriceAt(level)).ThenBy(p => p.Id, StringComparer.Ordinal)];
        small = Cheapest(catalogue.SmallParts).GroupBy(p => p.Role).ToDictionary(g => g.Key, g => g.ToArray());
        MetalPipes = Cheapest(catalogue.Pipes.Where(p => p.IsMetal && p.IsOutdoor));
        PipeInsulations = Cheapest(catalogue.PipeInsulations);
        Supplies = Cheapest(catalogue.Supplies.Where(s => !s.IsBattery));
        Pumps = [.. Cheapest(catalogue.Pumps).OrderBy(p => p.Watts)];
        Breakers = [.. Small(SmallPartRole.CircuitBreaker).OrderBy(p => p.RatedA)];
        PricedCable[] outdoor = [.. Cheapest(catalogue.Cables.Where(c => c.IsOutdoor)).Select(c => new PricedCable(c, CopperResistance.OhmPerM(c.SectionMm2, c.ConductorClass), c.Info.PriceAt(level)))];
        LowCables = [.. outdoor.Where(c => c.Cable.MaxVolts < MainsRating)];
        MainsCables = [.. outdoor.Where(c => c.Cable.MaxVolts >= MainsRating)];
    }

    /// <summary>Metal pipes for outdoors, the cheapest first.</summary>
    public IReadOnlyList<Pipe> MetalPipes { get; }

    /// <summary>Pipe insulations, the cheapest first.</summary>
    public IReadOnlyList<PipeInsulation> PipeInsulations { get; }

    /// <summary>Supplies on the mains, the cheapest first.</summary>
    public IReadOnlyList<PowerSupply> Supplies { get; }

    /// <summary>Pumps, the thriftiest first, of these the cheapest.</summary>
    public IReadOnlyList<Pump> Pumps { get; }

    /// <summary>Circuit breakers, the smallest first, of these the cheapest.</summary>
    public IReadOnlyList<SmallPart> Breakers { get; }

    /// <summary>Outdoor cables for extra-low voltage, the cheapest first.</summary>
    public IReadOnlyList<PricedCable> LowCables { get; }

    /// <summary>Outdoor cables for the mains, the cheapest first.</summary>
    public IReadOnlyList<PricedCable> MainsCables { get; }

    /// <summary>The shelf of a catalogue; made at the first call.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="level">Which of the prices are paid.</param>
    public static PartShelf Of(Catalogue catalogue, PriceLevel level) => Made.GetOrCreateValue(catalogue).GetOrAdd(level, l => new(catalogue, l));

    /// <summary>Small parts of a role, the cheapest first.</summary>
    public IReadOnlyList<SmallPart> Small(SmallPartRole role) => small.GetValueOrDefault(role, []);

    /// <summary>What <see cref="LoopFlow.Settle"/> says, worked out once for each loop.</summary>
    public LoopFlow Flow(Collector collector, int count, Pump pump, Pipe pipe, double lengthM, double liftM, double wantedKgPerSM2) =>
        flows.GetOrAdd(new(collector.Id, count, pump.Id, pipe.Id, lengthM, liftM, wantedKgPerSM2), _ => LoopFlow.Settle(collector, count, pump, pipe, lengthM, liftM, wantedKgPerSM2));

    /// <summary>Flow through a heap's coil and the same length of pipe in the house, worked out once for each.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="coil">The pipe.</param>
    /// <param name="lengthM">Length in the heap [m].</param>
    /// <param name="settle">Works it out.</param>
    public double HeapFlow(Pump pump, CompostCoil coil, double lengthM, Func<double> settle) => heapFlows.GetOrAdd((pump.Id, coil.Id, lengthM), _ => settle());

    /// <summary>A supply plan and what it needs, worked out once for each set of devices.</summary>
    /// <param name="key">All on which they depend.</param>
    /// <param name="plan">Works them out.</param>
    public (SupplyPlan Plan, Needs Needs) Supply(SupplyKey key, Func<SupplyKey, (SupplyPlan Plan, Needs Needs)> plan)
    {
        if (supplies.TryGetValue(key, out var known))
            return known;
        var made = plan(key);
        // About 20 MB; a search comes back to what it met lately.
        if (Interlocked.Increment(ref suppliesMade) % MostSupplies == 0)
            supplies.Clear();
        return supplies.GetOrAdd(key, made);
    }

    private readonly record struct FlowKey(string Collector, int Count, string Pump, string Pipe, double LengthM, double LiftM, double WantedKgPerSM2);
}
