using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>Tells layouts of the same title from the first of them, whose title stands alone.</summary>
internal static class DistinctTitles
{
    /// <summary>What tells each layout apart, in their order; empty where the title stands alone.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<JudgedLayout> layouts, Scenario scenario)
    {
        var apart = layouts.Select(_ => "").ToArray();
        foreach (var alike in Enumerable.Range(0, apart.Length).GroupBy(i => layouts[i].Title).Where(g => g.Count() > 1))
            Tell([.. alike], layouts, scenario, apart);
        return apart;
    }

    // Each time the choice that splits the rest furthest, until every one stands alone.
    private static void Tell(int[] alike, IReadOnlyList<JudgedLayout> layouts, Scenario scenario, string[] apart)
    {
        string Value(int i, Choice choice) => layouts[i].Choices.GetValueOrDefault(choice.Key, "");
        var told = new List<Choice>();
        int Apart(IEnumerable<Choice> choices) => alike.Select(i => string.Join('|', choices.Select(c => Value(i, c)))).Distinct().Count();
        while (Apart(told) < alike.Length)
        {
            var next = scenario.Systems.Choices.All.Except(told).MaxBy(c => Apart(told.Append(c)))!;
            if (Apart(told.Append(next)) == Apart(told))
                break;
            told.Add(next);
        }

        var inOrder = scenario.Systems.Choices.All.Where(told.Contains).ToList();
        foreach (var i in alike.Skip(1))
        {
            var others = inOrder.Where(c => Value(i, c).Length > 0 && Value(i, c) != Value(alike[0], c));
            apart[i] = TitleWords.Apart(others.Select(c => Words(layouts[i].ToLayout(scenario), c)));
        }
    }

    private static string Words(Layout layout, Choice choice) => choice.TitledWords(layout.ValueOf(choice));
}
