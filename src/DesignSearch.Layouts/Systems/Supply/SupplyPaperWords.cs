using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Electrics;
using P = DesignSearch.Layouts.Systems.Supply.SupplyPurposes;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>The papers of a supply: what is measured, and what an electrician must know to make an offer.</summary>
internal static class SupplyPaperWords
{
    // Residual-current devices: times at once and five times their current (IEC 61008, as a tester's manual gives them).
    private const double TripsWithinS = 0.3;
    private const double TripsAtFiveWithinS = 0.04;
    private const int ManyTimes = 5;

    // Insulation: IEC 60364-6 as instrument makers give it; 0.5 MΩ for safety extra-low voltage from memory.
    private const double MainsTestV = 500;
    private const double MainsMegOhm = 1;
    private const double LowTestV = 250;
    private const double LowMegOhm = 0.5;

    // A loop that is measured cold may have four fifths of what it may have warm (electricians' tables).
    private const double ColdShare = 0.8;
    private const double Milli = 1000;
    private const double ColdC = 20;
    private const string Ohm = "Ω";
    private const string MegOhm = "MΩ";
    private const string Volt = "V";

    public static IEnumerable<CommissioningStep> Steps(SupplyPlan plan, PaperGround ground) =>
    [
        .. plan.MainsCircuits.Count > 0 ? Mains(plan, ground) : [],
        .. plan.Lines.Count > 0 ? Insulated(plan, ground) : [],
        .. plan.Battery is { } battery ? OffGridPaperWords.Steps(battery, ground) : [],
        .. plan.Lines.SelectMany(l => Low(l, SpotOf(plan), ground)),
    ];

    public static IEnumerable<EnquiryFact> Enquiry(SupplyPlan plan, PaperGround ground)
    {
        if (plan.MainsCircuits.Count == 0)
            yield break;
        var (site, house) = (ground.Scenario.Site, ground.Scenario.Greenhouse);
        yield return Asked("Place", Written.Sentence(
            $"a greenhouse of {house.LengthM:0.#} × {house.WidthM:0.#} m, damp, watered by hose, soil underfoot: splash-proof, IP44 at",
            $"least (IEC 60364-7-705), whatever the local code asks for more"));
        foreach (var c in plan.MainsCircuits.Where(c => !c.IsControl))
            yield return Asked(Capital(c.Device), Device(c));
        yield return Asked("All together", Written.Sentence(
            $"{plan.MainsA:0.0} A running, {plan.MainsStartA:0.0} A while the hungriest starts,",
            $"at {SupplyPlan.MainsVolts:0} V, one phase"));
        yield return Asked("Cable", Cable(plan, site.MainsAtGreenhouse));
        yield return Asked("Where it begins", Written.Sentence(
            $"residual-current device {Milli * P.ResidualA:0} mA, type A at least, and {plan.Breaker?.Name ?? "a breaker"}"));
        yield return Asked("Loop impedance", Loop(plan, site.MainsLoopOhm));
        yield return Asked("Earth", Written.Sentence(
            $"the dwelling's carried out, or a rod of its own under {EarthFault.LargestRodOhm(P.ResidualA):0} Ω: yours to choose after",
            $"measuring and by the network's rule"));
        yield return Asked(
            "In the greenhouse", "isolator, splash-proof mains box, sockets where a plug bears the load; boxes are on the list");
        yield return Asked("The builder's own work", Own(plan));
        yield return Asked(
            "Hours reckoned", Written.Sentence($"{LicensedWork.Hours(plan, site.MainsAtGreenhouse):0.#} h; your offer decides"));
        yield return Asked("Wanted with it", "certificate with what was measured: continuity, insulation, loop, earth, trip times");
    }

    private static IEnumerable<CommissioningStep> Mains(SupplyPlan plan, PaperGround ground)
    {
        var hasMains = ground.Scenario.Site.MainsAtGreenhouse;
        var cable = P.MainsCable(hasMains);
        if (plan.MainsCable is { } copper)
        {
            var cold = 2 * plan.MainsCableM * CableDrop.OhmPerM(copper, ColdC);
            foreach (var step in ground.Try(
                cable, "dead: continuity of line and earth, joined at the far end",
                Written.Sentence($"no more than {cold:0.00} Ω at {ColdC:0} °C, and earth on every metal part"), Ohm, isLicensed: true))
            {
                yield return step;
            }
        }

        IEnumerable<CommissioningStep> more =
        [
            .. ground.Try(
                cable,
                Written.Sentence($"dead, all switched off and unplugged: insulation at {MainsTestV:0} V d.c., between cores and to earth"),
                Written.Sentence($"at least {MainsMegOhm:0} MΩ"), MegOhm, isLicensed: true),
            .. ground.Try(
                P.EarthRod, "dead: resistance of the rod, before anything else hangs on it",
                Written.Sentence($"under {EarthFault.LargestRodOhm(P.ResidualA):0} Ω, where the rod is chosen"), Ohm, isLicensed: true),
            .. plan.Loop is { } loop
                ? ground.Try(
                    P.Breaker(hasMains), "live: loop impedance at the end of its longest way: " + loop.To,
                    Written.Sentence($"cold no more than {ColdShare * loop.LargestOhm:0.00} Ω; {loop.Ohm:0.00} Ω warm is reckoned"),
                    Ohm, isLicensed: true)
                : [],
            .. ground.Try(
                P.ResidualCurrentDevice(hasMains),
                Written.Sentence($"live: trip time at {Milli * P.ResidualA:0} mA and at {Milli * ManyTimes * P.ResidualA:0} mA"),
                Written.Sentence(
                    $"within {Milli * TripsWithinS:0} ms and {Milli * TripsAtFiveWithinS:0} ms; not at {Milli * P.ResidualA / 2:0} mA;",
                    $"its test button trips it"),
                "ms", isLicensed: true),
            .. ground.Try(P.Isolator, "turn it off with everything on, and try each socket and box", "nothing has voltage"),
        ];
        foreach (var step in more)
            yield return step;
    }

    private static IEnumerable<CommissioningStep> Insulated(SupplyPlan plan, PaperGround ground) => ground.Try(
        P.Feeder(SpotOf(plan)),
        Written.Sentence($"dead, controls and electronics unplugged: insulation of all low voltage at {LowTestV:0} V d.c., to earth too"),
        Written.Sentence($"at least {LowMegOhm:0.0} MΩ"),
        MegOhm);

    private static IEnumerable<CommissioningStep> Low(LowLine line, SupplySpot spot, PaperGround ground)
    {
        var least = line.Volts * (1 - CableDrop.UsualLimit);
        return
        [
            .. ground.Try(
                P.MainFuse(line.Volts, line.MainFuseA), "read what is printed on it and on the fuses in the control box",
                Written.Sentence($"{P.Mark(line.MainFuseA)} behind the supply of {line.Volts:0} V; {Fuses(line)}")),
            .. ground.Try(
                P.Supply(line.Volts, spot), "with everything running, measure at the supply and at the farthest device",
                Written.Sentence(
                    $"at least {least:0.0} V there; {line.Volts * (1 - line.WorstDrop):0.0} V is reckoned"), Volt),
        ];
    }

    private static SupplySpot SpotOf(SupplyPlan plan) =>
        plan.Battery is not null ? SupplySpot.Battery : plan.MainsCircuits.Count > 0 ? SupplySpot.MainsBox : SupplySpot.Dwelling;

    private static string Fuses(LowLine line)
    {
        var devices = line.Circuits.Where(c => c is { IsControl: false, Watts: > 0 })
            .Select(c => $"{P.Mark(line.FuseBefore(c))} {c.Device}");
        return string.Join("; ", line.HasControls ? devices.Append($"{P.Mark(line.ControlsFuseA)} {SupplyWords.Controls}") : devices);
    }

    private static EnquiryFact Asked(string what, string value) => new(Trade.Electrician, what, value);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Device(Circuit c) => Written.Sentence(
        $"{c.RunningA:0.0} A running, {c.StartA:0.0} A at the start;",
        $"{c.Breaker?.Name ?? "a breaker that fits"}{(c.WantsOwnBreaker ? ", its own" : "")};",
        $"{(c.BringsLead ? "brings its lead" : $"{c.CableM:0.#} m of {c.Cable?.Name ?? "cable"} from the mains box")}");

    private static string Cable(SupplyPlan plan, bool hasMains) => Written.Sentence(
        $"{plan.MainsCableM:0} m of {plan.MainsCable?.Name ?? "cable"},",
        $"{(hasMains ? "inside the greenhouse, where mains are already" : "from the dwelling, in a duct that the builder lays")}");

    private static string Loop(SupplyPlan plan, double beginsOhm) => plan.Loop is { } loop
        ? Written.Sentence(
            $"{beginsOhm:0.00} Ω taken where the cable begins (please measure);",
            $"{loop.Ohm:0.00} Ω warm at the end of the longest way ({loop.To}),",
            $"{loop.LargestOhm:0.00} Ω at most for its breaker of {loop.BreakerA:0} A")
        : "not reckoned, for cable or breaker are not chosen";

    private static string Own(SupplyPlan plan)
    {
        if (plan.Lines.Count == 0)
            return "trench, duct and fixing the devices; nothing with a live part";
        var volts = Written.Joined([.. plan.Lines.Select(l => Written.Sentence($"{l.Volts:0} V"))]);
        return $"all at extra-low voltage ({volts}) behind its supplies: control box, cables, sensors, pumps, drives; trench and duct";
    }
}
