namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>A plant as components and joints: what pictures and papers are drawn from. Every line of the bill is in it, and nothing that is not on the bill.</summary>
/// <param name="Components">Parts, and things that are there.</param>
/// <param name="Joints">What joins them.</param>
public sealed record Scheme(IReadOnlyList<Component> Components, IReadOnlyList<Joint> Joints)
{
    /// <summary>A plant of nothing.</summary>
    public static Scheme Empty { get; } = new([], []);

    /// <summary>What keeps it from being one plant: a line of the bill that is not drawn, a terminal that nothing joins, a joint to nowhere.</summary>
    /// <param name="parts">Everything that the layout needs.</param>
    /// <returns>Each fault in words for who mends it; none in a sound scheme.</returns>
    public IEnumerable<string> Faults(IReadOnlyList<NeededPart> parts)
    {
        var drawn = Components.SelectMany(c => c.With.Append(c.PartId)).Concat(Joints.SelectMany(j => j.PartIds)).ToHashSet(StringComparer.Ordinal);
        var bought = parts.Select(p => p.Part.Id).ToHashSet(StringComparer.Ordinal);
        var ends = Joints.SelectMany(j => new[] { (j.From, j.FromTerminal, j.Medium), (j.To, j.ToTerminal, j.Medium) }).ToHashSet();
        var terminals = Components.SelectMany(c => c.Terminals.Select(t => (c.Name, t.Name, t.Medium))).ToHashSet();
        return
        [
            .. bought.Except(drawn).Select(id => $"'{id}' is bought and not drawn"),
            .. drawn.Where(id => id.Length > 0).Except(bought).Select(id => $"'{id}' is drawn and not bought"),
            .. terminals.Except(ends).Select(t => $"nothing is joined to {t.Item2} of {t.Item1}"),
            .. ends.Except(terminals).Select(t => $"a joint ends at {t.Item2} of {t.Item1}, which is not there"),
            .. Components.GroupBy(c => c.Name).Where(g => g.Skip(1).Any()).Select(g => $"two components are called {g.Key}"),
        ];
    }
}
