using DesignSearch.Search.Engine;

namespace DesignSearch.Search.Archive;

/// <summary>Every point met that meets all constraints and that no other beats; grows without bound. Of equals the first stays.</summary>
internal abstract class FrontArchive
{
    public abstract int Count { get; }

    /// <summary>The member at a place; by rising first objective where there are two objectives.</summary>
    public abstract EvaluatedPoint this[int place] { get; }

    /// <summary>Whether a member is nowhere worse than these figures.</summary>
    public abstract bool Covers(ReadOnlySpan<double> objectives);

    /// <summary>The value of one objective from which on a member is nowhere worse, the other objectives being as given; infinity for none.</summary>
    public virtual double Limit(ReadOnlySpan<double> objectives, int objective)
    {
        var limit = double.PositiveInfinity;
        for (var i = 0; i < Count; i++)
        {
            var figures = this[i].Evaluation.Objectives;
            var covers = true;
            for (var k = 0; k < figures.Length && covers; k++)
                covers = k == objective || figures[k] <= objectives[k];
            if (covers)
                limit = Math.Min(limit, figures[objective]);
        }

        return limit;
    }

    /// <summary>Takes the point in unless a member covers it, and drops those that it covers.</summary>
    public abstract bool Add(EvaluatedPoint point);

    public static FrontArchive For(int objectives) => objectives == 2 ? new SortedFront() : new ListedFront();
}
