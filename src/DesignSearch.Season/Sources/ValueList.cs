using System.Collections;

namespace DesignSearch.Season.Sources;

/// <summary>A list that never changes and equals any other of the same items.</summary>
internal sealed class ValueList<TItem>(TItem[] items) : IReadOnlyList<TItem>, IEquatable<ValueList<TItem>>
    where TItem : IEquatable<TItem>
{
    public static ValueList<TItem> Empty { get; } = new([]);

    public int Count => items.Length;

    private ReadOnlySpan<TItem> Items => items;

    public TItem this[int index] => items[index];

    /// <summary>A list of what another holds now.</summary>
    public static ValueList<TItem> Of(IEnumerable<TItem> from) => from as ValueList<TItem> ?? new([.. from]);

    public IEnumerator<TItem> GetEnumerator() => items.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public bool Equals(ValueList<TItem>? other) => other is not null && Items.SequenceEqual(other.Items);

    public override bool Equals(object? obj) => Equals(obj as ValueList<TItem>);

    public override int GetHashCode() => items.Aggregate(17, (sum, item) => HashCode.Combine(sum, item));
}
