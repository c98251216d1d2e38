namespace DesignSearch.Search;

/// <summary>The work on one block of points, in pieces that do not touch each other.</summary>
public interface IBlockWork
{
    /// <summary>How many pieces there are, 1 or more.</summary>
    int Pieces { get; }

    /// <summary>Does a piece; each is done once, in any order and on any thread, several at a time.</summary>
    /// <param name="piece">Its number, from 0.</param>
    void Do(int piece);

    /// <summary>Puts the pieces together once all are done.</summary>
    /// <param name="evaluations">One per point of the block, to be filled.</param>
    void Finish(Span<Evaluation> evaluations);
}
