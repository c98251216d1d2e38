namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Changes one choice of a layout at a time for its neighbour.</summary>
internal static class SwapWeighing
{
    public static IReadOnlyList<Swap> Of(Trial pick, TrialBook book)
    {
        var scenario = book.Scenario;
        var next = Neighbours.Next(scenario, pick.Layout).ToList();
        var trials = book.Of([.. next.Select(n => Neighbours.With(scenario, pick.Layout, n.Choice, n.To))]);
        return
        [
            .. next.Zip(trials, (n, t) => new Swap(
                n.Choice.Title,
                n.Choice.Words(n.From),
                n.Choice.Words(n.To),
                t.Figures.BuildPrice - pick.Figures.BuildPrice,
                t.Figures.LifeCost - pick.Figures.LifeCost,
                t.Figures.FrostDegreeHoursKh - pick.Figures.FrostDegreeHoursKh,
                t.Figures.WorstFrostHours,
                t.StandbyKwh - pick.StandbyKwh,
                t.Holds,
                t.Failed?.Title ?? ""))
                .OrderByDescending(s => Math.Abs(s.FrostDegreeHoursMoreKh)).ThenByDescending(s => Math.Abs(s.LifeCostMore)),
        ];
    }
}
