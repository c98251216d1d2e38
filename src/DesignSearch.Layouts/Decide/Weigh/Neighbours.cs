using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Layouts one choice away from another.</summary>
internal static class Neighbours
{
    /// <summary>A layout with one choice changed; a choice that wakes by it takes the first of its levels (numbers: the middle one).</summary>
    public static Layout With(Scenario scenario, Layout layout, string key, ChoiceValue value)
    {
        var wanted = new ChoiceValue[ChoiceTable.All.Count];
        for (var i = 0; i < wanted.Length; i++)
        {
            var levels = scenario.Choices[i].Levels;
            wanted[i] = ChoiceTable.All[i].Kind == ChoiceKind.Part ? levels[0] : levels[levels.Count / 2];
        }

        foreach (var (choice, own) in layout.Awake)
            wanted[ChoiceTable.IndexOf(choice.Key)] = own;
        wanted[ChoiceTable.IndexOf(key)] = value;
        return Layout.Of(wanted, scenario.Catalogue);
    }

    /// <summary>Every layout that differs by one choice, within the scenario's levels.</summary>
    public static IEnumerable<(Choice Choice, Layout Layout)> All(Scenario scenario, Layout layout) =>
        from awake in layout.Awake
        from level in scenario.Choices[ChoiceTable.IndexOf(awake.Choice.Key)].Levels
        where level != awake.Value
        select (awake.Choice, With(scenario, layout, awake.Choice.Key, level));

    /// <summary>The levels next to a layout's own: numbers by size, parts by price, "none" the cheapest.</summary>
    public static IEnumerable<(Choice Choice, ChoiceValue From, ChoiceValue To)> Next(Scenario scenario, Layout layout)
    {
        foreach (var (choice, own) in layout.Awake)
        {
            var levels = scenario.Choices[ChoiceTable.IndexOf(choice.Key)].Levels.OrderBy(l => choice.Kind == ChoiceKind.Number ? l.Number : (double)PriceOf(scenario, l)).ToList();
            var at = levels.IndexOf(own);
            if (at > 0)
                yield return (choice, own, levels[at - 1]);
            if (at >= 0 && at < levels.Count - 1)
                yield return (choice, own, levels[at + 1]);
        }
    }

    /// <summary>A value in words: the name of a part, or a number with its unit.</summary>
    public static string Words(Scenario scenario, Choice choice, ChoiceValue value) => choice.Kind == ChoiceKind.Part
        ? value.IsNone ? "none" : scenario.Catalogue.All.FirstOrDefault(p => p.Id == value.Id)?.Name ?? value.Id
        : FormattableString.Invariant($"{value.Number:0.##} {choice.Unit}");

    private static decimal PriceOf(Scenario scenario, ChoiceValue value) => value.IsNone ? -1 : scenario.Catalogue.All.FirstOrDefault(p => p.Id == value.Id)?.Price ?? 0;
}
