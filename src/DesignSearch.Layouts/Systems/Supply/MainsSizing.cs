using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Works the mains in the greenhouse out: cable, breaker, box and branches.</summary>
internal static class MainsSizing
{
    // The box's own cable, in and out.
    private const int GlandsOfBox = 2;

    /// <summary>Works it out and lists it.</summary>
    /// <param name="key">All on which the supply depends.</param>
    /// <param name="plan">The plan without mains in the greenhouse.</param>
    /// <param name="circuits">What is on the mains, the supplies of low voltage among them.</param>
    /// <param name="needs">The list.</param>
    public static SupplyPlan Of(SupplyKey key, SupplyPlan plan, IReadOnlyList<Circuit> circuits, Needs needs)
    {
        var (shelf, hasMains) = (SupplyShelf.Of(needs.Shelf), key.MainsAtGreenhouse);
        var watts = circuits.Sum(c => c.Watts);
        var amperes = watts / SupplyPlan.MainsVolts;
        var metres = hasMains ? SupplySizing.ShortCableM : key.MainsCableM;
        var cable = shelf.MainsCable(metres, amperes);
        needs.Pick(cable, SupplyWords.WantedMainsCable(amperes, metres), metres * NeededPart.Cuts, SupplyPurposes.MainsCable(hasMains));
        if (!hasMains)
            needs.Small(SmallPartRole.Conduit, metres, SupplyPurposes.MainsConduit);
        List<Circuit> branches = [.. circuits.Select(c => c.CableM > 0 ? c with { Cable = shelf.MainsCable(c.CableM, c.RunningA) } : c)];
        foreach (var branch in branches.Where(c => c.CableM > 0))
        {
            var wanted = SupplyWords.WantedMainsCable(branch.RunningA, branch.CableM);
            needs.Pick(branch.Cable, wanted, branch.CableM * NeededPart.Cuts, SupplyPurposes.MainsBranch(branch.Device));
        }

        needs.Small(SmallPartRole.ResidualCurrentDevice, 1, SupplyPurposes.ResidualCurrentDevice);
        var breaker = shelf.Breaker(amperes, cable?.RatedA ?? double.PositiveInfinity);
        needs.Pick(breaker, SupplyWords.WantedBreaker(amperes, cable?.RatedA ?? 0), 1, SupplyPurposes.Breaker);
        needs.Small(SmallPartRole.ControlBox, 1, SupplyPurposes.MainsBox, SupplyPlan.MainsVolts);
        needs.Small(SmallPartRole.Gland, GlandsOfBox + circuits.Count(SupplySizing.EntersTheBox), SupplyPurposes.MainsBoxGland);
        return plan with { MainsW = watts, MainsCircuits = branches, MainsCable = cable, MainsCableM = metres, Breaker = breaker };
    }
}
