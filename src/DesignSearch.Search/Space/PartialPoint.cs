namespace DesignSearch.Search.Space;

/// <summary>A point of which only some values are known; tells which unknown value a condition read first.</summary>
internal sealed class PartialPoint(int count) : IReadOnlyList<double>
{
    private double[] values = [.. Enumerable.Repeat(double.NaN, count)];
    private int missing;

    public int Count => values.Length;

    public double this[int index]
    {
        get
        {
            if (!double.IsNaN(values[index]))
                return values[index];
            missing = missing < 0 ? index : missing;
            return 0;
        }
    }

    public bool Ask(Variable variable, out int firstMissing)
    {
        missing = -1;
        var awake = variable.AwakeWhen?.Invoke(this) ?? true;
        firstMissing = missing;
        return awake;
    }

    public void Set(int index, double value) => values[index] = value;

    public PartialPoint Copy() => new(values.Length) { values = [.. values] };

    public IEnumerator<double> GetEnumerator()
    {
        for (var i = 0; i < values.Length; i++)
            yield return this[i];
    }

    System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
}
