namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>The least of a figure over some choices, by changing one at a time from several starts.</summary>
internal static class Descent
{
    private const int Starts = 3;

    // What is lacking weighs more than all money; where nothing is complete, that is left out of account.
    private const double Lacking = 1e9;
    private const int Seed = 1;

    /// <summary>The least that is found of each of two sums.</summary>
    /// <param name="levels">Levels of every choice; those with one stay.</param>
    /// <param name="figure">The sums of a point, and how much it lacks that no catalogue gives: such a point counts only where all lack something.</param>
    public static Costs Least(int[][] levels, Func<int[], (Costs Sums, int Lacks)> figure)
    {
        var complete = Least(levels, point => figure(point) is var (sums, lacks) ? new Costs(sums.Build + (lacks * Lacking), sums.Life + (lacks * Lacking)) : default);
        return complete.Build < Lacking / 2 && complete.Life < Lacking / 2 ? complete : Least(levels, point => figure(point).Sums);
    }

    private static Costs Least(int[][] levels, Func<int[], Costs> figure)
    {
        var (known, random) = (new Dictionary<string, Costs>(StringComparer.Ordinal), new Random(Seed));
        Costs Of(int[] point)
        {
            var key = string.Join(',', point);
            return known.TryGetValue(key, out var sums) ? sums : known[key] = figure(point);
        }

        var least = Costs.Endless;
        for (var start = 0; start < Starts; start++)
        {
            int[] from = [.. levels.Select(l => start == 0 ? l[0] : start == 1 ? l[^1] : l[random.Next(l.Length)])];
            least = new(Math.Min(least.Build, Down([.. from], levels, p => Of(p).Build)), Math.Min(least.Life, Down([.. from], levels, p => Of(p).Life)));
        }

        return least;
    }

    private static double Down(int[] point, int[][] levels, Func<int[], double> figure)
    {
        var least = figure(point);
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < levels.Length; i++)
            {
                var stays = point[i];
                foreach (var level in levels[i])
                {
                    point[i] = level;
                    if (figure(point) is var other && other < least - 1e-9)
                        (least, stays, better) = (other, level, true);
                }

                point[i] = stays;
            }
        }

        return least;
    }
}
