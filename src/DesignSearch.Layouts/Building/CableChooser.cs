using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>Chooses the cables of one extra-low voltage together: the cheapest that bear the current and lose little enough on the whole way.</summary>
internal static class CableChooser
{
    /// <summary>Largest drop while a device starts (common practice, no source) [0…1].</summary>
    public const double LargestStartDrop = 0.2;

    private const double LowRating = 400;

    /// <summary>Fills in the cables.</summary>
    /// <param name="line">The line with its devices.</param>
    /// <param name="sectionMm2">Cross-section that the feeder must have [mm²]; 0 for whatever serves.</param>
    /// <param name="needs">Where cables are looked up.</param>
    /// <returns>The line with its cables. Where nothing serves the feeder is null; a section asked for is taken even if it loses too much, and a check then says so.</returns>
    public static LowLine Choose(LowLine line, double sectionMm2, Needs needs)
    {
        var cables = needs.Catalogue.Cables.Where(c => c.IsOutdoor && c.MaxVolts < LowRating)
            .Select(c => (Cable: c, OhmPerM: CopperResistance.OhmPerM(c.SectionMm2, c.ConductorClass), Price: needs.PriceOf(c)))
            .OrderBy(c => c.Price).ThenBy(c => c.Cable.Id, StringComparer.Ordinal).ToList();
        var feeders = cables.Where(c => c.Cable.RatedA >= line.RunningA && (sectionMm2 == 0 || c.Cable.SectionMm2 == sectionMm2)).ToList();
        LowLine? best = null;
        var least = decimal.MaxValue;
        foreach (var feeder in feeders)
        {
            var (circuits, price) = Branches(line, feeder.OhmPerM, cables);
            price += (decimal)line.FeederM * feeder.Price;
            if (circuits is null || price >= least)
                continue;
            (best, least) = (line with { Feeder = feeder.Cable, Circuits = circuits }, price);
        }

        if (best is not null || sectionMm2 == 0 || feeders.Count == 0)
            return best ?? line;
        // A section that was asked for and loses too much: thick enough branches for the current, and the check tells.
        return line with { Feeder = feeders[0].Cable, Circuits = [.. line.Circuits.Select(c => c.CableM > 0 ? c with { Cable = cables.FirstOrDefault(k => k.Cable.RatedA >= c.RunningA).Cable } : c)] };
    }

    private static (List<Circuit>? Circuits, decimal Price) Branches(LowLine line, double feederOhmPerM, List<(Cable Cable, double OhmPerM, decimal Price)> cables)
    {
        var price = 0m;
        var found = new List<Circuit>(line.Circuits.Count);
        var fuse = LowLine.FuseSizesA.FirstOrDefault(f => f >= line.RunningA - 1e-9);
        foreach (var c in line.Circuits)
        {
            var left = CableDrop.UsualLimit * line.Volts - CableDrop.Volts(line.FeederM, line.RunningA, feederOhmPerM);
            var startLeft = LargestStartDrop * line.Volts - CableDrop.Volts(line.FeederM, line.RunningA + c.StartA - c.RunningA, feederOhmPerM);
            if (left < 0 || startLeft < 0)
                return (null, 0);
            if (c.CableM <= 0)
            {
                found.Add(c);
                continue;
            }

            var (cable, _, perM) = cables.FirstOrDefault(k => k.Cable.RatedA >= fuse && CableDrop.Volts(c.CableM, c.RunningA, k.OhmPerM) <= left && CableDrop.Volts(c.CableM, c.StartA, k.OhmPerM) <= startLeft);
            if (cable is null)
                return (null, 0);
            found.Add(c with { Cable = cable });
            price += (decimal)c.CableM * perM;
        }

        return (found, price);
    }
}
