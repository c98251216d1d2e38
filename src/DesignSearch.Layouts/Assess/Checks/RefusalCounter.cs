using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>Finds out which check costs most. Nothing is simulated: the same scenario gives the same counts, however the search went.</summary>
public static class RefusalCounter
{
    private const int Drawn = 2000;

    /// <summary>Counts what each check refuses.</summary>
    /// <param name="assessor">Prices and checks.</param>
    /// <param name="space">The layouts there are.</param>
    /// <returns>Only the checks that refuse something; the one that alone refuses most comes first.</returns>
    public static IReadOnlyList<Refusal> Count(LayoutAssessor assessor, LayoutSpace space) => Count(assessor, Some(space));

    /// <summary>Counts what each check refuses among some layouts.</summary>
    /// <param name="assessor">Prices and checks.</param>
    /// <param name="layouts">The layouts; twins count once.</param>
    public static IReadOnlyList<Refusal> Count(LayoutAssessor assessor, IEnumerable<Layout> layouts)
    {
        var seen = layouts.Distinct().Select(assessor.Price)
            .Select(p => (p.BuildPrice, Failed: assessor.Checks(p, []).Where(c => !c.Passed).Select(c => c.Id).ToList())).ToList();
        return
        [
            .. seen.SelectMany(s => s.Failed.Select(id => (Id: id, s.BuildPrice, Alone: s.Failed.Count == 1))).GroupBy(f => f.Id)
                .Select(g => new Refusal(g.Key, g.Count(), g.Count(f => f.Alone), g.Where(f => f.Alone).Min(f => (decimal?)f.BuildPrice), seen.Count))
                .OrderByDescending(r => r.Alone).ThenByDescending(r => r.Layouts).ThenBy(r => r.CheckId, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<Layout> Some(LayoutSpace space)
    {
        var levels = space.Variables.Select(v => v.Levels).ToArray();
        var point = new double[levels.Length];
        if (levels.Aggregate(1.0, (n, l) => n * l) <= Drawn)
        {
            for (var more = true; more;)
            {
                yield return space.At(point);
                more = Next(point, levels);
            }

            yield break;
        }

        var random = new Random(1);
        for (var i = 0; i < Drawn; i++)
        {
            for (var v = 0; v < point.Length; v++)
                point[v] = random.Next(levels[v]);
            yield return space.At(point);
        }
    }

    private static bool Next(double[] point, int[] levels)
    {
        for (var v = 0; v < point.Length; v++)
        {
            if (++point[v] < levels[v])
                return true;
            point[v] = 0;
        }

        return false;
    }
}
