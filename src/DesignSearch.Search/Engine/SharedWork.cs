namespace DesignSearch.Search.Engine;

/// <summary>Work that a <see cref="Crew"/> shares; its counts are touched under the crew's lock only.</summary>
internal sealed class SharedWork(IBlockWork work)
{
    private int taken;
    private int open = work.Pieces;

    /// <summary>Whether a piece waits for a hand.</summary>
    public bool HasPieces => taken < work.Pieces;

    /// <summary>Whether all pieces are done, or one failed.</summary>
    public bool IsDone => open == 0;

    /// <summary>What went wrong; null for nothing.</summary>
    public Exception? Fault { get; private set; }

    /// <summary>The next piece.</summary>
    public int Take() => taken++;

    /// <summary>Does a piece; without the lock.</summary>
    public void Do(int piece) => work.Do(piece);

    /// <summary>Counts a piece as done. After a fault no other is begun.</summary>
    public void Count(Exception? fault)
    {
        open--;
        if (fault is null)
            return;
        Fault ??= fault;
        open -= work.Pieces - taken;
        taken = work.Pieces;
    }
}
