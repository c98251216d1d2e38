using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
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
        var fixedOnes = mounts.Count(m => m.Turning == TurningKind.Fixed);
        if (scenario.LevelsOf(SolarChoices.Collector).All(l => l.IsNone) || fixedOnes == 0 || fixedOnes == mounts.Count)
            return None(TurningWords.NotBothAllowed);
        if (solar is null)
            return None(TurningWords.NoCollector);
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
        var gained = TurningWords.Gained(solar.AreaM2, solar.Mount.Turning, own, Yield(still), turning.Failed?.Title);
        if (Measure(still) <= goal + 1e-6)
            return given with { ExtraFixedM2 = 0, Sentence = gained + TurningWords.SavesNothing };
        var at = Enumerable.Range(1, counts.Count - 1).FirstOrDefault(i => Measure(more[i]) <= goal);
        if (at == 0)
            return given with { Sentence = gained + TurningWords.NoEqualArea(MostTimes) };
        var share = (Measure(more[at - 1]) - goal) / (Measure(more[at - 1]) - Measure(more[at]));
        var extra = (at - 1 + share) * area;
        var pays = decimal.Round(partsMore / (decimal)extra, 2);
        return given with
        {
            ExtraFixedM2 = extra,
            PaysAbovePerM2 = pays,
            Sentence = gained + TurningWords.Pays(extra, partsMore, scenario.Money.Currency, Round(pays), per),
        };
    }

    // The cheapest mount of those that does best on this layout.
    private Trial Best(Trial layout, IEnumerable<CollectorMount> mounts)
    {
        Layout On(CollectorMount mount) => Neighbours.With(scenario, layout.Layout, SolarChoices.Mount, ChoiceValue.Of(mount));
        var tilts = scenario.LevelsOf(SolarChoices.TiltDeg);
        return book.Of([.. mounts.SelectMany(m => tilts.Select(t => On(m).With(SolarChoices.TiltDeg, t)))])
            .OrderByDescending(t => t.Figures.PassesChecks).ThenBy(t => t.Figures.LifeCost).First();
    }

    private double Yield(Trial trial) => book.Assessor.Weighted(trial.Outcomes, (o, _) => o.CollectorYieldKwh);

    private static SolarLoop Loop(Trial trial) => trial.Priced.Built.Find<DesignedSolar>()!.Loop;

    // Two figures are as much as the model knows.
    private static double Round(decimal value)
    {
        var step = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(Math.Max(1, (double)value))) - 1));
        return Math.Round((double)value / step) * step;
    }

    private static TurningGain None(string sentence) => new(null, null, null, null, null, null, null, sentence);
}
