using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>A turning collector against more fixed area, simulated at whole numbers of collectors and read off between them.</summary>
/// <param name="book">Simulates.</param>
internal sealed class TurningWeighing(TrialBook book)
{
    private const int MostTimes = 4;

    private readonly Scenario scenario = book.Scenario;

    /// <summary>The gain of turning.</summary>
    /// <param name="solar">The layout to take the collector from; null where none with a collector passed every check.</param>
    public TurningGain Of(Trial? solar)
    {
        var mounts = scenario.LevelsOf(SolarChoices.Mount).Select(l => l.Part).OfType<CollectorMount>().ToList();
        if (scenario.LevelsOf(SolarChoices.Collector).All(l => l.IsNone) || mounts.All(m => m.Turning == TurningKind.Fixed) || mounts.All(m => m.Turning != TurningKind.Fixed))
            return None("No answer: the scenario does not allow both a turning and a fixed collector.");
        if (solar is null)
            return None("No answer: no layout with a collector passed every check.");
        var turning = Loop(solar).Mount.Turning != TurningKind.Fixed ? solar : Best(solar, mounts.Where(m => m.Turning != TurningKind.Fixed));
        var still = Best(turning, mounts.Where(m => m.Turning == TurningKind.Fixed));
        return Gain(turning, still);
    }

    private TurningGain Gain(Trial turning, Trial still)
    {
        var solar = Loop(turning);
        // Equal protection: as much stand-by where a heater holds the limit, as much frost where none does.
        var byStandby = turning.StandbyKwh > 0 || still.StandbyKwh > 0;
        double Measure(Trial t) => byStandby && t.Figures.WorstFrostHours == 0 ? t.StandbyKwh : t.Figures.FrostDegreeHoursKh;
        var (goal, area) = (Measure(turning), solar.AreaM2 / solar.Count);
        var counts = Enumerable.Range(solar.Count, MostTimes * solar.Count - solar.Count + 1).ToList();
        var more = book.Of([.. counts.Select(n => still.Layout.With(SolarChoices.CollectorCount, ChoiceValue.Of(n)))]);
        var (own, per) = (Yield(turning), (more[1].Parts - more[0].Parts) / (decimal)area);
        var partsMore = turning.Parts - still.Parts;
        var given = new TurningGain(solar.AreaM2, own, Yield(still), null, partsMore, null, per, "");
        var gained = Written.Sentence($"{solar.AreaM2:0.0} m² turned ({TurningWords(solar)}) bring {own:0} kWh a winter into the tank, fixed {Yield(still):0}");
        if (turning.Failed is { } failed)
            gained += $" (the turning one fails {failed.Title}, so it is shown for its heat alone)";
        if (Measure(still) <= goal + 1e-6)
            return given with { ExtraFixedM2 = 0, Sentence = gained + "; that saves neither frost nor stand-by heat, so no price of collector makes turning pay." };
        var at = Enumerable.Range(1, counts.Count - 1).FirstOrDefault(i => Measure(more[i]) <= goal);
        if (at == 0)
            return given with { Sentence = gained + Written.Sentence($"; even {MostTimes} times the area, fixed, does not protect as well, so there is no equal area.") };
        var share = (Measure(more[at - 1]) - goal) / (Measure(more[at - 1]) - Measure(more[at]));
        var extra = (at - 1 + share) * area;
        var pays = decimal.Round(partsMore / (decimal)extra, 2);
        return given with
        {
            ExtraFixedM2 = extra,
            PaysAbovePerM2 = pays,
            Sentence = gained + Written.Sentence($"; {extra:0.0#} m² more fixed collector protect as well. The turning parts cost {partsMore:0} {scenario.Money.Currency} more over the years, so turning pays only where a square metre of collector on its stand costs more than about {Round(pays):0}; here it costs {per:0}."),
        };
    }

    // The cheapest mount of those that does best on this layout.
    private Trial Best(Trial layout, IEnumerable<CollectorMount> mounts) => book
        .Of([.. mounts.SelectMany(m => scenario.LevelsOf(SolarChoices.TiltDeg).Select(t => Neighbours.With(scenario, layout.Layout, SolarChoices.Mount, ChoiceValue.Of(m)).With(SolarChoices.TiltDeg, t)))])
        .OrderByDescending(t => t.Figures.PassesChecks).ThenBy(t => t.Figures.LifeCost).First();

    private double Yield(Trial trial) => book.Assessor.Weighted(trial.Outcomes, (o, _) => o.CollectorYieldKwh);

    private static SolarLoop Loop(Trial trial) => trial.Priced.Built.Find<DesignedSolar>()!.Loop;

    private static string TurningWords(SolarLoop solar) => solar.Mount.Turning switch
    {
        TurningKind.TwoPosition => "two positions a day",
        TurningKind.Stepped => "in steps",
        _ => "after the sun",
    };

    // Two figures are as much as the model knows.
    private static double Round(decimal value)
    {
        var step = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(Math.Max(1, (double)value))) - 1));
        return Math.Round((double)value / step) * step;
    }

    private static TurningGain None(string sentence) => new(null, null, null, null, null, null, null, sentence);
}
