namespace DesignSearch.Search.Moves;

/// <summary>Chooses among several ways by what each gained lately per use; none falls below a floor.</summary>
internal sealed class Credit(int ways, double floor)
{
    private const double Memory = 0.99;
    private const double Prior = 4;

    private readonly double[] gains = new double[ways];
    private readonly double[] uses = new double[ways];

    /// <summary>Books what one use gained, 0 or more.</summary>
    public void Book(int way, double gain)
    {
        for (var i = 0; i < ways; i++)
        {
            gains[i] *= Memory;
            uses[i] *= Memory;
        }

        gains[way] += gain;
        uses[way]++;
    }

    /// <summary>Draws a way in proportion to its recent gain per use.</summary>
    public int Choose(ref SplitMixStream random)
    {
        double gained = 0, used = 0;
        for (var i = 0; i < ways; i++)
        {
            gained += gains[i];
            used += uses[i];
        }

        if (gained <= 0)
            return random.Below(ways);
        var mean = gained / used;
        var sum = 0.0;
        for (var i = 0; i < ways; i++)
            sum += Worth(i, mean);
        var at = random.Unit();
        for (var i = 0; i < ways - 1; i++)
        {
            at -= floor + ((1 - (ways * floor)) * Worth(i, mean) / sum);
            if (at < 0)
                return i;
        }

        return ways - 1;
    }

    private double Worth(int way, double mean) => (gains[way] + (Prior * mean)) / (uses[way] + Prior);
}
