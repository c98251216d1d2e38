namespace DesignSearch.Climate.Weather;

/// <summary>Bridges what lies between observations of the sky: many stations look up every third hour only.</summary>
internal static class CloudGaps
{
    private const double FarthestHours = 6;

    /// <summary>Cover between two observations runs straight where they are at most six hours apart; elsewhere it stays unknown.</summary>
    /// <param name="grid">Whose slots the column has.</param>
    /// <param name="cloud">[%], NaN where nobody looked; stays as it is.</param>
    public static double[] Bridge(SampleGrid grid, double[] cloud)
    {
        var bridged = (double[])cloud.Clone();
        foreach (var (first, count) in new GapFiller(grid).Gaps(cloud))
        {
            var (before, after) = (first - 1, first + count);
            if (before < 0 || after >= cloud.Length || (count + 1) * grid.StepHours > FarthestHours)
                continue;
            for (var j = 1; j <= count; j++)
                bridged[first + j - 1] = cloud[before] + j * (cloud[after] - cloud[before]) / (count + 1);
        }

        return bridged;
    }
}
