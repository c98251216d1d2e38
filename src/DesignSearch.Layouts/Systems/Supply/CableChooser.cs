using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>
/// Chooses the cables of one extra-low voltage together: the cheapest that bear the current and lose little enough on the whole way.
/// </summary>
internal static class CableChooser
{
    /// <summary>Largest drop while a device starts (common practice, no source) [0…1].</summary>
    public const double LargestStartDrop = 0.2;

    private const double Tiny = 1e-9;

    /// <summary>Fills in the cables.</summary>
    /// <param name="line">The line with its devices.</param>
    /// <param name="sectionMm2">Cross-section that the feeder must have [mm²]; 0 for whatever serves.</param>
    /// <param name="cables">Cables for extra-low voltage, the cheapest first.</param>
    /// <returns>
    /// The line with its cables. Where nothing serves the feeder is null; a section asked for is taken even if it loses too much, and a
    /// check then says so.
    /// </returns>
    public static LowLine Choose(LowLine line, double sectionMm2, IReadOnlyList<PricedCable> cables)
    {
        var running = line.RunningA;
        var mainFuse = line.MainFuseA * TimeLagFuse.CableShare;
        Cable? asked = null;
        PricedCable? best = null;
        var least = decimal.MaxValue;
        var (own, bestOwn) = (new PricedCable?[line.Circuits.Count], new PricedCable?[line.Circuits.Count]);
        foreach (var feeder in cables)
        {
            if (feeder.Cable.RatedA < running || (sectionMm2 != 0 && feeder.Cable.SectionMm2 != sectionMm2))
                continue;
            asked ??= feeder.Cable;
            if (feeder.Cable.RatedA < mainFuse - Tiny)
                continue;
            var price = Price(feeder, line.FeederM);
            if (!Branches(line, running, feeder.OhmPerM, cables, own, ref price) || price >= least)
                continue;
            (best, least) = (feeder, price);
            (own, bestOwn) = (bestOwn, own);
        }

        if (best is not null)
            return Fitted(line, best.Cable, bestOwn);
        return sectionMm2 == 0 || asked is null ? line : AsAsked(line, asked, cables);
    }

    private static LowLine Fitted(LowLine line, Cable feeder, PricedCable?[] own)
    {
        var circuits = new Circuit[own.Length];
        for (var i = 0; i < own.Length; i++)
            circuits[i] = own[i] is { } cable ? line.Circuits[i] with { Cable = cable.Cable } : line.Circuits[i];
        return line with { Feeder = feeder, Circuits = circuits };
    }

    // A section that was asked for and loses too much: thick enough branches for the current, and the check tells.
    private static LowLine AsAsked(LowLine line, Cable feeder, IReadOnlyList<PricedCable> cables)
    {
        Cable? Bearing(Circuit c) => cables.FirstOrDefault(k => Bears(k, c.Cores, line.FuseBefore(c)))?.Cable;
        return line with { Feeder = feeder, Circuits = [.. line.Circuits.Select(c => c.CableM > 0 ? c with { Cable = Bearing(c) } : c)] };
    }

    // Fills in the cable of each device that wants one; false where nothing serves.
    private static bool Branches(
        LowLine line,
        double running,
        double feederOhmPerM,
        IReadOnlyList<PricedCable> cables,
        PricedCable?[] own,
        ref decimal price)
    {
        Array.Clear(own);
        var left = (CableDrop.UsualLimit * line.Volts) - CableDrop.Volts(line.FeederM, running, feederOhmPerM);
        if (left < 0)
            return false;
        for (var i = 0; i < own.Length; i++)
        {
            var c = line.Circuits[i];
            var startLeft = (LargestStartDrop * line.Volts) - CableDrop.Volts(line.FeederM, line.StartingA(c), feederOhmPerM);
            if (startLeft < 0)
                return false;
            if (c.CableM <= 0)
                continue;
            if (Cheapest(c, line.FuseBefore(c), left, startLeft, cables) is not { } serves)
                return false;
            own[i] = serves;
            price += Price(serves, c.CableM * c.Count);
        }

        return true;
    }

    // By the metre: what is left of a coil serves the next device, and that is not known here.
    private static decimal Price(PricedCable cable, double metres) =>
        Pricing.Total(Needs.Bought(cable.Cable, metres * NeededPart.Cuts), 0, cable.Price);

    private static bool Bears(PricedCable cable, int cores, double fuseA) =>
        cable.Cable.Cores >= cores && cable.Cable.RatedA >= (fuseA * TimeLagFuse.CableShare) - Tiny;

    private static PricedCable? Cheapest(Circuit circuit, double fuse, double leftV, double startLeftV, IReadOnlyList<PricedCable> cables)
    {
        for (var i = 0; i < cables.Count; i++)
        {
            var k = cables[i];
            if (Bears(k, circuit.Cores, fuse)
                && CableDrop.Volts(circuit.CableM, circuit.RunningA, k.OhmPerM) <= leftV
                && CableDrop.Volts(circuit.CableM, circuit.StartA, k.OhmPerM) <= startLeftV)
            {
                return k;
            }
        }

        return null;
    }
}
