using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Money;

/// <summary>
/// What all lines of each article that is measured out come to, while a list is gone through: a few numbers, for a search asks for them for
/// every layout. Pieces and sets need no such sum: they come whole, and their lines are exact to the cent. Not safe for several threads.
/// </summary>
internal sealed class ArticleSums
{
    private readonly List<IPart> articles = new(64);
    private readonly List<decimal> wanted = new(64);

    /// <summary>How many articles there are so far.</summary>
    public int Count => articles.Count;

    /// <summary>One of the articles, and what its lines want.</summary>
    public (IPart Part, decimal Wanted) this[int i] => (articles[i], wanted[i]);

    /// <summary>Adds what a line wants to the sum of its article.</summary>
    /// <param name="part">The part of the line.</param>
    /// <param name="quantity">How much the line wants.</param>
    public void Add(IPart part, decimal quantity)
    {
        for (var i = 0; i < articles.Count; i++)
        {
            if (!ReferenceEquals(articles[i], part))
                continue;
            wanted[i] += quantity;
            return;
        }

        articles.Add(part);
        wanted.Add(quantity);
    }

    /// <summary>Forgets all sums.</summary>
    public void Clear()
    {
        articles.Clear();
        wanted.Clear();
    }
}
