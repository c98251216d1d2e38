namespace DesignSearch.Search;

/// <summary>One variable of a space. Ordered and category variables take the whole numbers 0 … <see cref="Levels"/> − 1.</summary>
public sealed record Variable
{
    /// <summary>Unique within the space.</summary>
    public required string Name { get; init; }

    /// <summary>What its levels mean.</summary>
    public required VariableKind Kind { get; init; }

    /// <summary>Number of levels, 1 or more; ignored for a real variable.</summary>
    public int Levels { get; init; }

    /// <summary>Lower bound of a real variable.</summary>
    public double Low { get; init; }

    /// <summary>Upper bound of a real variable, above the lower.</summary>
    public double High { get; init; }

    /// <summary>
    /// Says from the values of the variables before it (by index in the space) whether this one is awake; null means always.
    /// A sleeping variable holds its first level (or lower bound), so that points that differ only in sleepers are one point.
    /// </summary>
    public Func<IReadOnlyList<double>, bool>? AwakeWhen { get; init; }
}
