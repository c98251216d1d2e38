using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Checks of collector loop, pipes, pump and tank.</summary>
internal static class LoopChecks
{
    // Under a clear sky water freezes in a collector while the air is still some kelvin above freezing (utility advice on solar freezing).
    private const double ClearSkyK = 4;

    // What counts as a whole allowance to spare (own choice).
    private const double AmpleK = 20;

    // Less than this share of the wanted flow leaves the collectors too hot to give much (own choice).
    private const double LeastFlowShare = 0.4;
    private const double LiftSpareM = 0.5;
    private const double LeastFallM = 0.01;
    private const double LeastBoreMm = 1;
    private const double PercentPerUnit = 100;
    private const double LeastMiss = 0.001;

    public static void Add(SolarLoop solar, Conditions conditions, List<Check> checks)
    {
        checks.Add(Freezing(solar.Protection, conditions.LowestOutsideC - ClearSkyK));
        checks.Add(UnpoweredFrost(solar.Protection, conditions.LowestOutsideC - ClearSkyK));
        var ridge = conditions.Scenario.Greenhouse.RidgeM;
        checks.Add(SolarRules.Headroom.Found(
            solar.Tank.HeightM <= ridge, 1 - (solar.Tank.HeightM / ridge), SolarCheckWords.Headroom(solar.Tank.HeightM, ridge)));
        checks.Add(FirstMetres(solar));
        var pipeMax = solar.Pipe.MaxTemperatureC;
        checks.Add(SolarRules.PipeRating.Found(
            pipeMax >= solar.CeilingC, (pipeMax / solar.CeilingC) - 1, SolarCheckWords.PipeRating(solar.CeilingC, pipeMax)));
        if (solar.Insulation is { } sleeve)
        {
            checks.Add(InsulationHeat(solar, sleeve));
            checks.Add(InsulationFit(solar.Pipe, sleeve));
        }

        if (solar.Flow.LiftM > 0)
            checks.Add(Lift(solar.Flow));
        var share = solar.Flow.KgPerS / solar.Flow.WantedKgPerS;
        checks.Add(SolarRules.PumpFlow.Found(share >= LeastFlowShare, share - LeastFlowShare, SolarCheckWords.Flow(solar.Flow)));
        if (solar.Protection.MinFallPercent > 0)
            checks.Add(DrainFall(solar, conditions.Scenario.Site));
        if (TankHeat(solar, conditions.Outcomes) is { } heat)
            checks.Add(heat);
    }

    // Whatever drains or circulates by current fails in the very night for which it was bought.
    private static Check UnpoweredFrost(FreezeProtection protection, double nightC)
    {
        var safe = protection.WorksWithoutPower || nightC > 0;
        return SolarRules.UnpoweredFrost.Found(safe, safe ? 1 : Math.Min(nightC / AmpleK, -LeastMiss), SolarCheckWords.UnpoweredFrost(safe, nightC));
    }

    private static Check Freezing(FreezeProtection protection, double nightC)
    {
        var spare = nightC - protection.ProtectsToC;
        return SolarRules.Freezing.Found(spare >= 0, spare / AmpleK, SolarCheckWords.Freezing(protection, nightC));
    }

    private static Check FirstMetres(SolarLoop solar)
    {
        var stagnation = solar.Collector.StagnationC;
        var bears = solar.Collector.IsGlazed ? solar.FirstMetres?.MaxTemperatureC ?? 0 : solar.Pipe.MaxTemperatureC;
        return SolarRules.FirstMetres.Found(bears >= stagnation, (bears / stagnation) - 1, SolarCheckWords.FirstMetres(stagnation, bears));
    }

    private static Check InsulationHeat(SolarLoop solar, PipeInsulation sleeve)
    {
        var (stagnation, near) = (solar.Collector.StagnationC, solar.FirstInsulation?.MaxTemperatureC);
        var bears = near is null || near >= stagnation;
        var margin = Math.Min(sleeve.MaxTemperatureC / solar.CeilingC, (near ?? stagnation) / stagnation) - 1;
        var words = SolarCheckWords.InsulationHeat(sleeve.MaxTemperatureC, solar.CeilingC, stagnation, near);
        return SolarRules.InsulationHeat.Found(sleeve.MaxTemperatureC >= solar.CeilingC && bears, margin, words);
    }

    private static Check InsulationFit(Pipe pipe, PipeInsulation sleeve)
    {
        var fits = pipe.OuterMm >= sleeve.InnerFromMm && pipe.OuterMm <= sleeve.InnerToMm;
        return SolarRules.InsulationFit.Found(fits, fits ? 1 : -1, SolarCheckWords.InsulationFit(pipe.OuterMm, sleeve));
    }

    private static Check Lift(LoopFlow flow)
    {
        var (head, needed) = (flow.HeadAtNoFlowM, flow.LiftM + LiftSpareM);
        return SolarRules.PumpLift.Found(head > needed, 1 - (needed / head), SolarCheckWords.Lift(flow.LiftM, head));
    }

    // What runs back to the tank needs the height; what is let out by valves is let out wherever the pipe is lowest.
    private static Check DrainFall(SolarLoop solar, SiteLimits site)
    {
        var (protection, fall, bore) = (solar.Protection, site.CollectorAboveTankM, solar.Pipe.BoreMm);
        var runsBack = protection.Method == FreezeMethod.DrainBack;
        var needed = runsBack ? solar.PipeRunM * protection.MinFallPercent / PercentPerUnit : 0;
        var passed = bore >= protection.MinBoreMm && (!runsBack || fall >= needed);
        var fallMargin = runsBack ? (fall / Math.Max(needed, LeastFallM)) - 1 : double.MaxValue;
        var margin = Math.Min(fallMargin, (bore / Math.Max(LeastBoreMm, protection.MinBoreMm)) - 1);
        var words = runsBack ? SolarCheckWords.RunsBack(protection, needed, fall, bore) : SolarCheckWords.LetOut(protection, bore);
        return SolarRules.DrainFall.Found(passed, margin, words);
    }

    private static Check? TankHeat(SolarLoop solar, IReadOnlyList<Outcome> outcomes)
    {
        var highest = outcomes.Count == 0 ? double.NaN : outcomes.Max(o => o.TankHighestC);
        if (!double.IsFinite(highest))
            return null;
        var bears = Math.Min(solar.Tank.MaxTemperatureC, solar.Release.MaxTemperatureC);
        return SolarRules.TankHeat.Found(highest <= bears, 1 - (highest / bears), SolarCheckWords.TankHeat(highest, bears));
    }
}
