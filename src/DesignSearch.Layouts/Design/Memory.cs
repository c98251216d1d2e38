using System.Collections.Concurrent;

namespace DesignSearch.Layouts.Design;

/// <summary>Remembers what was worked out, and forgets all of it when it grows too large; a search comes back to what it met lately. Safe to use from several threads.</summary>
/// <typeparam name="TKey">What the result hangs on.</typeparam>
/// <typeparam name="TValue">The result.</typeparam>
/// <param name="most">Results kept at most, 1 or more.</param>
public sealed class Memory<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, TValue> known = new();

    private int made;

    /// <summary>What was worked out for a key, now or before.</summary>
    /// <param name="key">The key.</param>
    /// <param name="work">Works it out; the same result whenever it is asked.</param>
    public TValue Of(TKey key, Func<TKey, TValue> work)
    {
        ArgumentNullException.ThrowIfNull(work);
        if (known.TryGetValue(key, out var value))
            return value;
        var fresh = work(key);
        if (Interlocked.Increment(ref made) % most == 0)
            known.Clear();
        return known.GetOrAdd(key, fresh);
    }
}
