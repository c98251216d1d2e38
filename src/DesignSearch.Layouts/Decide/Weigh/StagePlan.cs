using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Layouts.Scenarios;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Puts the parts of a layout into an order of building in which every stage works by itself and helps.</summary>
internal static class StagePlan
{
    /// <summary>The stages; first what takes most frost away for its price, then what saves most electricity for its price.</summary>
    public static IReadOnlyList<Stage> Of(Trial pick, Trial bare, TrialBook book)
    {
        var scenario = book.Scenario;
        var left = ChoiceTable.All.Where(c => c is { Kind: ChoiceKind.Part, AwakeWhen: null } && !pick.Layout[c.Key].IsNone).ToList();
        var (stages, now, taken) = (new List<Stage>(), bare, new HashSet<string>(StringComparer.Ordinal));
        while (left.Count > 0)
        {
            var next = book.Of([.. left.Select(c => Partly(pick.Layout, [.. taken, c.Key], scenario))]);
            var at = Enumerable.Range(0, left.Count).Where(i => next[i].Figures.PassesChecks && Helps(next[i], now)).OrderByDescending(i => Worth(next[i], now)).Cast<int?>().FirstOrDefault();
            // What helps only together comes together.
            Choice[] added = at is { } one ? [left[one]] : [.. left];
            var then = at is { } two ? next[two] : pick;
            taken.UnionWith(added.Select(c => c.Key));
            left.RemoveAll(added.Contains);
            stages.Add(new(
                stages.Count + 1,
                string.Join(", ", added.Select(c => Neighbours.Words(scenario, c, pick.Layout[c.Key]) + Count(pick, c))) + (HasElectrics(then) && !HasElectrics(now) ? ", with the electrics it needs" : ""),
                then.Figures.BuildPrice - now.Figures.BuildPrice,
                then.Figures.BuildPrice,
                then.Figures.FrostDegreeHoursKh,
                then.Figures.WorstFrostHours,
                then.Figures.LowestAirC,
                then.StandbyKwh,
                then.Priced.Built.Installation.PlantsStandApart));
            now = then;
        }

        return stages;
    }

    private static Layout Partly(Layout whole, HashSet<string> roots, Scenario scenario)
    {
        var values = ChoiceTable.All.Select(c => c is { Kind: ChoiceKind.Part, AwakeWhen: null } && !roots.Contains(c.Key) ? ChoiceValue.None : whole[c.Key]);
        return Layout.Of([.. values], scenario.Catalogue);
    }

    private static bool Helps(Trial then, Trial now) => then.Figures.FrostDegreeHoursKh < now.Figures.FrostDegreeHoursKh
        || (then.Figures.FrostDegreeHoursKh <= now.Figures.FrostDegreeHoursKh && then.StandbyKwh < now.StandbyKwh);

    private static (double FrostPerMoney, double KwhPerMoney) Worth(Trial then, Trial now)
    {
        var money = Math.Max(1, (double)(then.Figures.BuildPrice - now.Figures.BuildPrice));
        return ((now.Figures.FrostDegreeHoursKh - then.Figures.FrostDegreeHoursKh) / money, (now.StandbyKwh - then.StandbyKwh) / money);
    }

    private static bool HasElectrics(Trial trial) => trial.Priced.Built.Parts.Any(p => p.System == SupplyBuilding.System);

    private static string Count(Trial pick, Choice choice) => choice.Key switch
    {
        "barrel" => FormattableString.Invariant($" ({pick.Layout["barrel_count"].Number:0} of them)"),
        "collector" => FormattableString.Invariant($" ({pick.Layout["collector_count"].Number:0} of them) with mount, pipe, tank and heat release"),
        _ => "",
    };
}
