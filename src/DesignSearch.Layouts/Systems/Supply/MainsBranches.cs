using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>The branches of the mains box: what heats has a breaker for itself, all else shares one.</summary>
internal static class MainsBranches
{
    // Inside the house a lead or a plug bears no more than this [A] (common practice, no source).
    private const double LeadBearsA = 16;

    /// <summary>Chooses breakers and cables and lists them; one device alone stands behind the breaker where the cable begins.</summary>
    /// <param name="circuits">What is on the mains.</param>
    /// <param name="origin">The breaker where the cable begins; null where none serves.</param>
    /// <param name="loopOhm">The loop as far as the mains box [Ω].</param>
    /// <param name="needs">The list.</param>
    public static List<Circuit> Of(IReadOnlyList<Circuit> circuits, SmallPart? origin, double loopOhm, Needs needs)
    {
        var shelf = SupplyShelf.Of(needs.Shelf);
        List<Circuit> shared = [.. circuits.Where(c => c is { WantsOwnBreaker: false, IsControl: false })];
        var own = circuits.Count(c => c.WantsOwnBreaker);
        var divided = own > 1 || (own == 1 && shared.Count > 0);
        var rest = divided && shared.Count > 0 ? Breaker(shelf, Load.Of(shared), loopOhm, SupplyWords.TheOthers, needs) : origin;
        var branches = new List<Circuit>(circuits.Count);
        foreach (var c in circuits)
        {
            // A control stands in the circuit of what it switches: it bears what the whole box may draw.
            var isOwn = c is { IsControl: false, WantsOwnBreaker: true } && divided;
            var breaker = isOwn ? Breaker(shelf, Load.Of([c]), loopOhm, c.Device, needs) : c.IsControl ? origin : rest;
            branches.Add(Cabled(c with { Breaker = breaker }, shelf, needs));
        }

        return branches;
    }

    private static SmallPart? Breaker(SupplyShelf shelf, Load load, double loopOhm, string device, Needs needs)
    {
        var breaker = shelf.Breaker(load.RunningA, load.StartA, LargestBranchA(load), loopOhm);
        var duty = Duty.Current(PlantState.Running, load.RunningA);
        needs.Pick(breaker, SupplyWords.WantedBreaker(load.RunningA, LargestBranchA(load)), 1, SupplyPurposes.BranchBreaker(device), duty);
        return breaker;
    }

    // What draws more than a plug bears is joined by a cable of its own, for which its breaker is chosen.
    private static double LargestBranchA(Load load) => load.RunningA > LeadBearsA ? double.PositiveInfinity : LeadBearsA;

    private static Circuit Cabled(Circuit c, SupplyShelf shelf, Needs needs)
    {
        if (c.CableM <= 0)
            return c;
        var cable = shelf.MainsBranch(c);
        var metres = c.CableM * c.Count * NeededPart.Cuts;
        var duty = Duty.Current(PlantState.Running, c.BreakerA);
        needs.Pick(cable, SupplyWords.WantedMainsCable(c.RunningA, c.CableM), metres, SupplyPurposes.MainsBranch(c.Device), duty);
        return c with { Cable = cable };
    }
}
