using System.Collections.Frozen;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>Every choice there is, in order: a choice may sleep only on those before it.</summary>
public sealed class ChoiceSet
{
    private readonly FrozenDictionary<Choice, int> places;
    private readonly Func<IChoices, bool>[] lowVoltage;

    /// <summary>Makes a set.</summary>
    /// <param name="all">The choices in order, each key once.</param>
    /// <param name="lowVoltage">Say of choices made whether something of them needs extra-low voltage.</param>
    /// <exception cref="ArgumentException">A key stands twice, or a choice hangs on a later one.</exception>
    public ChoiceSet(IEnumerable<Choice> all, IEnumerable<Func<IChoices, bool>> lowVoltage)
    {
        All = [.. all];
        this.lowVoltage = [.. lowVoltage];
        places = All.Select((c, i) => (c, i)).ToFrozenDictionary(p => p.c, p => p.i);
        if (All.GroupBy(c => c.Key, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new ArgumentException($"Two choices are named '{twice.Key}'.", nameof(all));
        if (All.FirstOrDefault(c => c.Under is { } root && !(places.TryGetValue(root, out var at) && at < places[c])) is { } early)
            throw new ArgumentException($"'{early.Key}' hangs on a choice that does not come before it.", nameof(all));
    }

    /// <summary>The choices.</summary>
    public IReadOnlyList<Choice> All { get; }

    /// <summary>Place of a choice in <see cref="All"/>.</summary>
    /// <exception cref="KeyNotFoundException">It is not in the set.</exception>
    public int IndexOf(Choice choice) => places[choice];

    /// <summary>Whether something of the choices made needs extra-low voltage.</summary>
    public bool NeedsLowVoltage(IChoices choices)
    {
        foreach (var needs in lowVoltage)
        {
            if (needs(choices))
                return true;
        }

        return false;
    }
}
