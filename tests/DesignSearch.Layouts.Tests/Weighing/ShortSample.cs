namespace DesignSearch.Layouts.Tests;

/// <summary>The sample in three weeks of January, searched to the end and judged.</summary>
public sealed class ShortSample : IDisposable
{
    internal WeighedSample Weighed { get; } = new(WeighedSample.Short);

    public void Dispose() => Weighed.Dispose();
}
