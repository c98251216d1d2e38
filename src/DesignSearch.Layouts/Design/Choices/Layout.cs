using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>One complete choice of parts, sizes and settings, in canonical form: a choice that sleeps holds its resting value.</summary>
public sealed class Layout : IChoiceReader
{
    private readonly ChoiceValue[] values;
    private readonly bool[] awake;

    private Layout(ChoiceValue[] values, bool[] awake) => (this.values, this.awake) = (values, awake);

    /// <summary>The choices that matter for this layout with their values, in the order of <see cref="ChoiceTable.All"/>.</summary>
    public IEnumerable<(Choice Choice, ChoiceValue Value)> Awake => ChoiceTable.All.Select((c, i) => (c, values[i])).Where((_, i) => awake[i]);

    /// <inheritdoc/>
    public ChoiceValue this[string key] => values[ChoiceTable.IndexOf(key)];

    /// <summary>Makes a layout from any values; those of sleeping choices are put to rest.</summary>
    /// <param name="wanted">One value per entry of <see cref="ChoiceTable.All"/>.</param>
    /// <param name="catalogue">Where parts are looked up.</param>
    public static Layout Of(IReadOnlyList<ChoiceValue> wanted, Catalogue catalogue)
    {
        var values = new ChoiceValue[ChoiceTable.All.Count];
        var awake = new bool[values.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = ChoiceTable.AtRest(ChoiceTable.All[i]);
        var layout = new Layout(values, awake);
        for (var i = 0; i < values.Length; i++)
        {
            awake[i] = ChoiceTable.All[i].AwakeWhen?.Invoke(layout, catalogue) ?? true;
            if (awake[i])
                values[i] = wanted[i];
        }

        return layout;
    }

    /// <summary>The layout with nothing added: the bare house.</summary>
    public static Layout Bare(Catalogue catalogue) => Of([.. ChoiceTable.All.Select(ChoiceTable.AtRest)], catalogue);

    /// <summary>The same layout with one choice changed.</summary>
    /// <param name="key">Key of the choice.</param>
    /// <param name="value">Its new value.</param>
    /// <param name="catalogue">Where parts are looked up.</param>
    public Layout With(string key, ChoiceValue value, Catalogue catalogue)
    {
        var changed = (ChoiceValue[])values.Clone();
        changed[ChoiceTable.IndexOf(key)] = value;
        return Of(changed, catalogue);
    }
}
