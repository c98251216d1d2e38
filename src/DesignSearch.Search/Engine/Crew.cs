using System.Runtime.ExceptionServices;

namespace DesignSearch.Search.Engine;

/// <summary>
/// Threads that do pieces of work in the order in which it was handed in, while the search goes on. Whoever waits for work helps with it, so one thread
/// alone needs no crew.
/// </summary>
internal sealed class Crew : IDisposable
{
    private readonly Lock gate = new();
    private readonly Queue<SharedWork> waiting = [];
    private readonly SemaphoreSlim pieces = new(0);
    private readonly Thread[] helpers;
    private readonly ManualResetEventSlim moved = new(false);
    private bool isOver;

    /// <summary>Gathers a crew.</summary>
    /// <param name="threads">Threads in all, 1 or more, that of the search among them.</param>
    public Crew(int threads)
    {
        helpers = [.. Enumerable.Range(1, threads - 1).Select(i => new Thread(Help) { IsBackground = true, Name = FormattableString.Invariant($"search {i}") })];
        foreach (var helper in helpers)
            helper.Start();
    }

    /// <summary>Hands work in.</summary>
    public SharedWork Begin(IBlockWork work)
    {
        var shared = new SharedWork(work);
        lock (gate)
            waiting.Enqueue(shared);
        if (helpers.Length > 0)
            pieces.Release(Math.Min(work.Pieces, helpers.Length));
        return shared;
    }

    /// <summary>Helps until work is done; rethrows what went wrong in it.</summary>
    public void Finish(SharedWork work)
    {
        while (true)
        {
            moved.Reset();
            if (Next(work) is var (taken, piece))
                Do(taken, piece);
            else if (IsDone(work))
                break;
            else
                moved.Wait();
        }

        if (work.Fault is { } fault)
            ExceptionDispatchInfo.Throw(fault);
    }

    /// <summary>Drops what was not begun and waits for what was.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            isOver = true;
            waiting.Clear();
        }

        if (helpers.Length > 0)
            pieces.Release(helpers.Length);
        foreach (var helper in helpers)
            helper.Join();
        pieces.Dispose();
        moved.Dispose();
    }

    private void Help()
    {
        while (true)
        {
            pieces.Wait();
            while (Next(null) is var (work, piece))
                Do(work, piece);
            lock (gate)
            {
                if (isOver)
                    return;
            }
        }
    }

    // The next piece of what was handed in first; for who waits for some work, none once that is done.
    private (SharedWork Work, int Piece)? Next(SharedWork? until)
    {
        lock (gate)
        {
            while (waiting.TryPeek(out var first) && !first.HasPieces)
                waiting.Dequeue();
            return until is not { IsDone: true } && waiting.TryPeek(out var work) ? (work, work.Take()) : null;
        }
    }

    private bool IsDone(SharedWork work)
    {
        lock (gate)
            return work.IsDone;
    }

    private void Do(SharedWork work, int piece)
    {
        Exception? fault = null;
        try
        {
            work.Do(piece);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            fault = e;
        }

        lock (gate)
            work.Count(fault);
        moved.Set();
    }
}
