using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Puts the parts of a layout into an order of building in which every stage works by itself and helps.</summary>
internal static class StagePlan
{
    /// <summary>The stages; first what takes most frost away for its price, then what saves most electricity for its price.</summary>
    public static IReadOnlyList<Stage> Of(Trial pick, Trial bare, TrialBook book)
    {
        var left = pick.Layout.Set.All.OfType<PartChoice>().Where(c => c.IsRoot && pick.Layout.Has(c)).ToList();
        var (stages, now, taken, told) = (new List<Stage>(), bare, new HashSet<PartChoice>(), new HashSet<string>());
        while (left.Count > 0)
        {
            var next = book.Of([.. left.Select(c => Partly(pick.Layout, [.. taken, c]))]);
            var at = Enumerable.Range(0, left.Count)
                .Where(i => next[i].Figures.PassesChecks && Helps(next[i], now))
                .OrderByDescending(i => Worth(next[i], now))
                .Cast<int?>()
                .FirstOrDefault();
            // What helps only together comes together.
            PartChoice[] added = at is { } one ? [left[one]] : [.. left];
            var then = at is { } two ? next[two] : pick;
            taken.UnionWith(added);
            left.RemoveAll(added.Contains);
            stages.Add(new(
                stages.Count + 1,
                StageWords.Adds(added.Select(c => Words(pick.Layout, c)), HasElectrics(then) && !HasElectrics(now)),
                then.Figures.BuildPrice - now.Figures.BuildPrice,
                then.Figures.BuildPrice,
                then.Figures.FrostDegreeHoursKh,
                then.Figures.WorstFrostHours,
                then.Figures.LowestAirC,
                then.StandbyKwh,
                then.Priced.Built.Plants,
                TakeCare(then, told)));
            now = then;
        }

        return stages;
    }

    private static string TakeCare(Trial then, HashSet<string> told)
    {
        var lowest = then.Outcomes.Min(o => o.LowestHouseAirC);
        return string.Join(' ', then.Priced.Built.Systems.SelectMany(s => s.Cautions).Where(c => lowest < c.ComesTrueBelowC && told.Add(c.Topic)).Select(c => c.Text));
    }

    private static Layout Partly(Layout whole, HashSet<PartChoice> roots)
    {
        bool IsLeftOut(Choice choice) => choice is PartChoice { IsRoot: true } root && !roots.Contains(root);
        return Layout.Of([.. whole.Set.All.Select(c => IsLeftOut(c) ? ChoiceValue.None : whole.ValueOf(c))], whole.Set);
    }

    private static bool Helps(Trial then, Trial now) => then.Figures.FrostDegreeHoursKh < now.Figures.FrostDegreeHoursKh
        || (then.Figures.FrostDegreeHoursKh <= now.Figures.FrostDegreeHoursKh && then.StandbyKwh < now.StandbyKwh);

    private static (double FrostPerMoney, double KwhPerMoney) Worth(Trial then, Trial now)
    {
        var money = Math.Max(1, (double)(then.Figures.BuildPrice - now.Figures.BuildPrice));
        return ((now.Figures.FrostDegreeHoursKh - then.Figures.FrostDegreeHoursKh) / money, (now.StandbyKwh - then.StandbyKwh) / money);
    }

    private static bool HasElectrics(Trial trial) => trial.Priced.Built.Supply is not null;

    private static string Words(Layout layout, PartChoice choice)
    {
        var count = layout.Set.All.OfType<NumberChoice>().FirstOrDefault(n => n.CountsParts && n.Under == choice);
        return StageWords.Part(choice.Words(layout.ValueOf(choice)), count is null ? null : layout.Get(count), choice.ComesWith);
    }
}
