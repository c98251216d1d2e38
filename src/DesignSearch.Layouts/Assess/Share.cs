namespace DesignSearch.Layouts.Assess;

/// <summary>Shares out pieces of work that do not touch each other.</summary>
internal static class Share
{
    /// <summary>Does every piece once.</summary>
    /// <param name="count">How many pieces, 0 or more.</param>
    /// <param name="threads">Threads to use, 1 or more.</param>
    /// <param name="work">Does the piece of a number.</param>
    public static void Out(int count, int threads, Action<int> work)
    {
        if (threads > 1 && count > 1)
        {
            Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = threads }, work);
            return;
        }

        for (var i = 0; i < count; i++)
            work(i);
    }
}
