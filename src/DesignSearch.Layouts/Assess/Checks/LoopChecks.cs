using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Solar;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>Checks of collector loop, pipes, pump and tank.</summary>
internal static class LoopChecks
{
    // Under a clear sky water freezes in a collector while the air is still some kelvin above freezing (utility advice on solar freezing).
    private const double ClearSkyK = 4;
    private const double LeastFlowShare = 0.4;

    public static IEnumerable<Check> Of(Scenario scenario, SolarLoop solar, double lowestOutsideC, IReadOnlyList<Outcome> outcomes)
    {
        var protection = solar.Protection;
        var night = lowestOutsideC - ClearSkyK;
        var spare = night - protection.ProtectsToC;
        yield return Check.Of("collector-freezing", "collector on the coldest night", spare >= 0, spare / 20, protection.Method == FreezeMethod.Antifreeze
            ? (FormattableString)$"A clear sky takes the collector to about {night:0} °C; the antifreeze holds to {protection.ProtectsToC:0} °C."
            : $"The collector stands empty at night, when a clear sky takes it to about {night:0} °C.", "Radiation to a clear sky: utility advice on solar freezing; antifreeze: Melinder 2010");
        var stagnation = solar.Collector.StagnationC;
        var first = solar.FirstMetres;
        var firstMax = solar.Collector.IsGlazed ? first?.MaxTemperatureC ?? 0 : solar.Pipe.MaxTemperatureC;
        yield return Check.Of("first-metres", "pipe next to the dry collector", firstMax >= stagnation, firstMax / stagnation - 1, $"Dry in the sun the collector reaches {stagnation:0} °C (from its certificate, not a formula); the pipe next to it bears {firstMax:0} °C.", "Stagnation from the collector's certificate (ISO 9806)");
        var pipeMax = solar.Pipe.MaxTemperatureC;
        yield return Check.Of("pipe-rating", "long pipe at the tank's ceiling", pipeMax >= solar.CeilingC, pipeMax / solar.CeilingC - 1, $"The pump stops at {solar.CeilingC:0} °C in the tank; the long pipe bears {pipeMax:0} °C.", "The catalogue's rating of the pipe");
        if (solar.Insulation is { } foam)
        {
            var fits = solar.Pipe.OuterMm >= foam.InnerFromMm && solar.Pipe.OuterMm <= foam.InnerToMm;
            var near = solar.FirstInsulation;
            var bears = near is null || near.MaxTemperatureC >= stagnation;
            yield return Check.Of("insulation-heat", "insulation on hot pipe", foam.MaxTemperatureC >= solar.CeilingC && bears, Math.Min(foam.MaxTemperatureC / solar.CeilingC, (near?.MaxTemperatureC ?? stagnation) / stagnation) - 1, $"The long pipe's sleeve bears {foam.MaxTemperatureC:0} °C, the tank's ceiling is {solar.CeilingC:0} °C; next to the collector, where {stagnation:0} °C may come, {(near is null ? "the pipe stays bare" : FormattableString.Invariant($"the sleeve bears {near.MaxTemperatureC:0} °C"))}.", "The catalogue's ratings; stagnation from the collector's certificate (ISO 9806)");
            yield return Check.Of("insulation-fit", "insulation on the pipe", fits, fits ? 1 : -1, $"The pipe is {solar.Pipe.OuterMm:0} mm thick, the sleeve is made for {foam.InnerFromMm:0} to {foam.InnerToMm:0} mm.", "The catalogue's figures");
        }

        var head = solar.Flow.HeadAtNoFlowM;
        if (solar.Flow.LiftM > 0)
            yield return Check.Of("pump-lift", "lifting water into the empty collector", head > solar.Flow.LiftM + 0.5, 1 - (solar.Flow.LiftM + 0.5) / head, $"The empty loop must be filled {solar.Flow.LiftM:0.0} m up, half a metre more for safety; the pump lifts {head:0.0} m.", "Hydrostatics");
        var share = solar.Flow.KgPerS / solar.Flow.WantedKgPerS;
        yield return Check.Of("pump-flow", "flow through the collectors", share >= LeastFlowShare, share - LeastFlowShare, $"The pump brings {solar.Flow.KgPerS * 60:0.0} of the {solar.Flow.WantedKgPerS * 60:0.0} L/min the collectors want, at {solar.Flow.DropPa / 1000:0.0} kPa.", "Pipe friction after Colebrook; 0.006 to 0.015 kg/s per m² is common practice, no source");
        if (protection.MinFallPercent > 0)
            yield return DrainFall(scenario, solar);
        var highest = outcomes.Count == 0 ? double.NaN : outcomes.Max(o => o.TankHighestC);
        if (double.IsFinite(highest))
        {
            var max = Math.Min(solar.Tank.MaxTemperatureC, solar.Release.MaxTemperatureC);
            yield return Check.Of("tank-heat", "heat in the tank", highest <= max, 1 - highest / max, $"The tank came to {highest:0} °C at most; tank and heat release bear {max:0} °C.", "Simulated; the catalogue's ratings");
        }
    }

    private static Check DrainFall(Scenario scenario, SolarLoop solar)
    {
        // What runs back to the tank needs the height; what is let out by valves is let out wherever the pipe is lowest.
        var back = solar.Protection.Method == FreezeMethod.DrainBack;
        var needed = back ? scenario.Site.PipeRunM * solar.Protection.MinFallPercent / 100 : 0;
        var fall = scenario.Site.CollectorAboveTankM;
        var bore = solar.Pipe.BoreMm >= solar.Protection.MinBoreMm;
        var passed = bore && (!back || fall >= needed);
        var margin = Math.Min(back ? fall / Math.Max(needed, 0.01) - 1 : double.MaxValue, solar.Pipe.BoreMm / Math.Max(1, solar.Protection.MinBoreMm) - 1);
        return Check.Of("drain-fall", "water running back by itself", passed, margin, back
            ? (FormattableString)$"Every pipe must fall at least {solar.Protection.MinFallPercent:0.#} cm a metre, {needed:0.0} m over the run, and the collector stands {fall:0.0} m above the tank; the pipe's bore is {solar.Pipe.BoreMm:0} mm, {solar.Protection.MinBoreMm:0} mm are needed."
            : $"Every pipe must fall at least {solar.Protection.MinFallPercent:0.#} cm a metre to where the valves let it out; the pipe's bore is {solar.Pipe.BoreMm:0} mm, {solar.Protection.MinBoreMm:0} mm are needed.", "Installers' guidance on drain-back slope");
    }
}
