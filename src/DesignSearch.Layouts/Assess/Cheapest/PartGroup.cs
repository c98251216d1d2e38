using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>A part that can be added by itself, with the choices that sleep without it.</summary>
/// <param name="Root">Place of that part among the choices.</param>
/// <param name="Under">Places of the choices that sleep without it.</param>
/// <param name="Count">Place of the choice of how many of it there are; negative for none.</param>
internal sealed record PartGroup(int Root, IReadOnlyList<int> Under, int Count)
{
    /// <summary>All groups of a scenario, in the order of their choices.</summary>
    public static IReadOnlyList<PartGroup> All(Scenario scenario)
    {
        var all = scenario.Systems.Choices.All;
        return
        [
            .. Enumerable.Range(0, all.Count).Where(i => all[i] is PartChoice { IsRoot: true }).Select(root =>
            {
                int[] under = [.. Enumerable.Range(0, all.Count).Where(i => all[i].Under == all[root])];
                var count = Array.Find(under, i => all[i] is NumberChoice { CountsParts: true } && i == root + 1);
                return new PartGroup(root, under, count == 0 ? -1 : count);
            }),
        ];
    }
}
