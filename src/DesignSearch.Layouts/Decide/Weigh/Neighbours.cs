using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Layouts one choice away from another.</summary>
internal static class Neighbours
{
    /// <summary>A layout with one choice changed; a choice that wakes by it takes the first of its levels (numbers: the middle one).</summary>
    public static Layout With(Scenario scenario, Layout layout, Choice choice, ChoiceValue value)
    {
        var set = layout.Set;
        var wanted = new ChoiceValue[set.All.Count];
        for (var i = 0; i < wanted.Length; i++)
        {
            var levels = scenario.Choices[i].Levels;
            wanted[i] = set.All[i] is PartChoice ? levels[0] : levels[levels.Count / 2];
        }

        foreach (var (awake, own) in layout.Awake)
            wanted[set.IndexOf(awake)] = own;
        wanted[set.IndexOf(choice)] = value;
        return Layout.Of(wanted, set);
    }

    /// <summary>Every layout that differs by one choice, within the scenario's levels.</summary>
    public static IEnumerable<(Choice Choice, Layout Layout)> All(Scenario scenario, Layout layout) =>
        from awake in layout.Awake
        from level in scenario.LevelsOf(awake.Choice)
        where level != awake.Value
        select (awake.Choice, With(scenario, layout, awake.Choice, level));

    /// <summary>The levels next to a layout's own: numbers by size, parts by price, "none" the cheapest.</summary>
    public static IEnumerable<(Choice Choice, ChoiceValue From, ChoiceValue To)> Next(Scenario scenario, Layout layout)
    {
        foreach (var (choice, own) in layout.Awake)
        {
            var levels = scenario.LevelsOf(choice).OrderBy(l => choice is NumberChoice ? l.Number : (double)PriceOf(l)).ToList();
            var at = levels.IndexOf(own);
            if (at > 0)
                yield return (choice, own, levels[at - 1]);
            if (at >= 0 && at < levels.Count - 1)
                yield return (choice, own, levels[at + 1]);
        }
    }

    private static decimal PriceOf(ChoiceValue value) => value.IsNone ? -1 : value.Part?.Price ?? 0;
}
