using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Sources;

/// <summary>Takes one value for each name, in the order in which the names are declared.</summary>
/// <param name="names">The names declared.</param>
/// <param name="values">Room for as many values.</param>
internal ref struct LaneWriter<TName, T>(ReadOnlySpan<TName> names, Span<T> values)
    where TName : class
    where T : unmanaged, ILane<T>
{
    private readonly ReadOnlySpan<TName> names = names;
    private readonly Span<T> values = values;
    private int next;

    /// <summary>Takes the next value.</summary>
    /// <exception cref="InvalidOperationException">Another name is the next.</exception>
    public void Put(TName name, in T value)
    {
        if (!ReferenceEquals(names[next], name))
            throw new InvalidOperationException($"{name} was told where {names[next]} is declared.");
        values[next++] = value;
    }
}
