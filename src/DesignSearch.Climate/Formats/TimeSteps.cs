namespace DesignSearch.Climate.Formats;

/// <summary>The usual distance of the rows of a file.</summary>
internal static class TimeSteps
{
    /// <summary>The commonest difference of neighbouring stamps [min]; 60 when there are too few rows to tell.</summary>
    public static int UsualMinutes(IReadOnlyList<DateTime> stamps)
    {
        var steps = new Dictionary<int, int>();
        for (var i = 1; i < stamps.Count; i++)
        {
            var minutes = (int)Math.Round((stamps[i] - stamps[i - 1]).TotalMinutes);
            if (minutes > 0)
                steps[minutes] = steps.GetValueOrDefault(minutes) + 1;
        }

        return steps.Count == 0 ? 60 : steps.OrderByDescending(s => s.Value).ThenBy(s => s.Key).First().Key;
    }
}
