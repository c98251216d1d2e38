using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Parts.Hydraulics;
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
    private const double BoilsC = 100;

    public static void Add(SolarLoop solar, Conditions conditions, List<Check> checks)
    {
        checks.Add(Freezing(solar, conditions.LowestOutsideC - ClearSkyK));
        checks.Add(UnpoweredFrost(solar, conditions.LowestOutsideC - ClearSkyK));
        var ridge = conditions.Scenario.Greenhouse.RidgeM;
        checks.Add(SolarRules.Headroom.Found(
            solar.Tank.HeightM <= ridge, 1 - (solar.Tank.HeightM / ridge), SolarCheckWords.Headroom(solar.Tank.HeightM, ridge)));
        checks.Add(FirstMetres(solar));
        var (pipeMax, hottest) = (solar.Pipe.MaxTemperatureC, solar.Heat.HottestC);
        var pipeWords = SolarCheckWords.PipeRating(solar.Heat, pipeMax);
        checks.Add(SolarRules.PipeRating.Found(pipeMax >= hottest, (pipeMax / hottest) - 1, pipeWords));
        var startWords = SolarCheckWords.HotStart(solar.Heat, solar.Controller, solar.ControllerVolts);
        checks.Add(SolarRules.HotStart.Found(solar.Controller is not null, solar.Controller is null ? -1 : 1, startWords));
        checks.Add(OpenTank(solar));
        if (!solar.StaysFull)
            checks.Add(PumpInlet(solar, conditions.Scenario.Place.ElevationM));
        if (solar.Insulation is { } sleeve)
        {
            checks.Add(InsulationHeat(solar, sleeve));
            checks.Add(InsulationFit(solar.Pipe, sleeve));
        }

        if (solar.Flow.LiftM > 0)
            checks.Add(Lift(solar.Flow, solar.Pump));
        var share = solar.Flow.KgPerS / solar.Flow.WantedKgPerS;
        var flowWords = SolarCheckWords.Flow(solar.Flow, solar.Pump);
        checks.Add(SolarRules.PumpFlow.Found(share >= LeastFlowShare, share - LeastFlowShare, flowWords));
        if (!solar.StaysFull)
            checks.Add(DrainFall(solar));
        Gathering.Add(solar, checks);
        if (TankHeat(solar, conditions.Outcomes) is { } heat)
            checks.Add(heat);
    }

    // Whatever drains or circulates by current fails in the very night for which it was bought.
    private static Check UnpoweredFrost(SolarLoop solar, double nightC)
    {
        var safe = solar.Protection.WorksWithoutPower || solar.MayFreeze || nightC > 0;
        var words = SolarCheckWords.UnpoweredFrost(safe, solar.MayFreeze, nightC);
        return SolarRules.UnpoweredFrost.Found(safe, safe ? 1 : Math.Min(nightC / AmpleK, -LeastMiss), words);
    }

    private static Check Freezing(SolarLoop solar, double nightC)
    {
        var share = (nightC - solar.ProtectsToC) / AmpleK;
        var words = SolarCheckWords.Freezing(solar, nightC);
        return SolarRules.Freezing.Found(share >= 0 || solar.MayFreeze, solar.MayFreeze ? Math.Max(0, share) : share, words);
    }

    // Without an exchanger between them the loop's water is the tank's, and a tank under pressure lets no air into the loop.
    private static Check OpenTank(SolarLoop solar)
    {
        var fits = solar.StaysFull || !solar.Tank.IsClosed || solar.Protection.ExchangerEffectiveness < 1;
        return SolarRules.OpenTank.Found(fits, fits ? 1 : -1, SolarCheckWords.OpenTank(solar));
    }

    // A tank may stand half empty; the way to the pump is short and wide.
    private static Check PumpInlet(SolarLoop solar, double elevationM)
    {
        const double LostM = 0.3;
        const double SpareM = 0.6;
        var (hot, wanted) = (solar.Heat.ReturnC, solar.Pump.InletHeadM + SpareM);
        var has = InletHead.AvailableM(elevationM, Math.Min(hot, BoilsC), solar.Tank.HeightM / 2, LostM);
        return SolarRules.PumpInlet.Found(has >= wanted, (has / wanted) - 1, SolarCheckWords.PumpInlet(hot, has, wanted));
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
        var hottest = solar.Heat.HottestC;
        var margin = Math.Min(sleeve.MaxTemperatureC / hottest, (near ?? stagnation) / stagnation) - 1;
        var words = SolarCheckWords.InsulationHeat(sleeve.MaxTemperatureC, hottest, stagnation, near);
        return SolarRules.InsulationHeat.Found(sleeve.MaxTemperatureC >= hottest && bears, margin, words);
    }

    private static Check InsulationFit(Pipe pipe, PipeInsulation sleeve)
    {
        var fits = pipe.OuterMm >= sleeve.InnerFromMm && pipe.OuterMm <= sleeve.InnerToMm;
        return SolarRules.InsulationFit.Found(fits, fits ? 1 : -1, SolarCheckWords.InsulationFit(pipe.OuterMm, sleeve));
    }

    private static Check Lift(LoopFlow flow, Pump pump)
    {
        var (head, needed) = (flow.HeadAtNoFlowM, flow.LiftM + LiftSpareM);
        return SolarRules.PumpLift.Found(head > needed, 1 - (needed / head), SolarCheckWords.Lift(flow.LiftM, pump));
    }

    // What runs back needs the height; what is let out by valves is let out wherever the pipe is lowest. Folds hold water anywhere.
    private static Check DrainFall(SolarLoop solar)
    {
        var (protection, fall, bore) = (solar.Protection, solar.FallM, solar.Pipe.BoreMm);
        if (SolarShelf.HoldsWater(solar.Pipe))
            return SolarRules.DrainFall.Found(false, -1, SolarCheckWords.Folds(solar.Pipe));
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
