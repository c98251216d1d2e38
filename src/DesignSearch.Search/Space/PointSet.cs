namespace DesignSearch.Search.Space;

/// <summary>A set of keys that only grows: 16 bytes a place, at most two thirds full.</summary>
internal sealed class PointSet
{
    private PointKey[] places = new PointKey[1024];

    public int Count { get; private set; }

    public bool Contains(PointKey key)
    {
        var mask = places.Length - 1;
        for (var at = (int)key.High & mask; ; at = (at + 1) & mask)
        {
            if (places[at] == key)
                return true;
            if (places[at] == default)
                return false;
        }
    }

    public bool Add(PointKey key)
    {
        if (3L * (Count + 1) > 2L * places.Length)
            Grow();
        if (!Put(key))
            return false;
        Count++;
        return true;
    }

    private bool Put(PointKey key)
    {
        var mask = places.Length - 1;
        for (var at = (int)key.High & mask; ; at = (at + 1) & mask)
        {
            if (places[at] == key)
                return false;
            if (places[at] != default)
                continue;
            places[at] = key;
            return true;
        }
    }

    private void Grow()
    {
        var old = places;
        places = new PointKey[old.Length * 2];
        foreach (var key in old)
        {
            if (key != default)
                Put(key);
        }
    }
}
