namespace DesignSearch.Layouts.Design.Choices;

/// <summary>One complete choice of parts, sizes and settings, in canonical form: a choice that sleeps holds its resting value. Equal when every value is.</summary>
public sealed class Layout : IChoices, IEquatable<Layout>
{
    private readonly ChoiceValue[] values;
    private readonly bool[] awake;

    private Layout(ChoiceSet set, ChoiceValue[] values, bool[] awake) => (Set, this.values, this.awake) = (set, values, awake);

    /// <inheritdoc/>
    public ChoiceSet Set { get; }

    /// <summary>The choices that matter for this layout with their values, in the order of the set.</summary>
    public IEnumerable<(Choice Choice, ChoiceValue Value)> Awake => Set.All.Select((c, i) => (c, values[i])).Where((_, i) => awake[i]);

    /// <summary>Makes a layout from any values; those of sleeping choices are put to rest.</summary>
    /// <param name="wanted">One value per entry of the set.</param>
    /// <param name="set">The choices there are.</param>
    public static Layout Of(IReadOnlyList<ChoiceValue> wanted, ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(set);
        var values = new ChoiceValue[set.All.Count];
        var awake = new bool[values.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = set.All[i].AtRest;
        var layout = new Layout(set, values, awake);
        for (var i = 0; i < values.Length; i++)
        {
            awake[i] = set.All[i].IsAwake(layout);
            if (awake[i])
                values[i] = wanted[i];
        }

        return layout;
    }

    /// <summary>The layout with nothing added: the bare house.</summary>
    /// <param name="set">The choices there are.</param>
    public static Layout Bare(ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return Of([.. set.All.Select(c => c.AtRest)], set);
    }

    /// <inheritdoc/>
    public ChoiceValue ValueOf(Choice choice) => values[Set.IndexOf(choice)];

    /// <summary>The same layout with one choice changed.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="value">Its new value.</param>
    public Layout With(Choice choice, ChoiceValue value)
    {
        var changed = (ChoiceValue[])values.Clone();
        changed[Set.IndexOf(choice)] = value;
        return Of(changed, Set);
    }

    /// <inheritdoc/>
    public bool Equals(Layout? other) => other is not null && ReferenceEquals(Set, other.Set) && values.AsSpan().SequenceEqual(other.values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Layout);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var value in values)
            hash.Add(value);
        return hash.ToHashCode();
    }
}
