using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;

namespace DesignSearch.Layouts.Tests;

/// <summary>What is asked of every scheme.</summary>
internal static class SchemeFaults
{
    /// <summary>What keeps a scheme from being one plant: a line of the bill that is not drawn, a terminal that nothing joins, a joint to nowhere.</summary>
    /// <param name="scheme">The scheme.</param>
    /// <param name="parts">Everything that the layout needs.</param>
    /// <returns>Each fault in words for who mends it; none in a sound scheme.</returns>
    public static IEnumerable<string> Faults(this Scheme scheme, IReadOnlyList<NeededPart> parts)
    {
        var drawn = scheme.Components.SelectMany(c => c.With.Append(c.PartId)).Concat(scheme.Joints.SelectMany(j => j.PartIds)).ToHashSet(StringComparer.Ordinal);
        var bought = parts.Select(p => p.Part.Id).ToHashSet(StringComparer.Ordinal);
        var ends = scheme.Joints.SelectMany(j => new[] { (j.From, j.FromTerminal, j.Medium), (j.To, j.ToTerminal, j.Medium) }).ToHashSet();
        var terminals = scheme.Components.SelectMany(c => c.Terminals.Select(t => (c.Name, t.Name, t.Medium))).ToHashSet();
        return
        [
            .. bought.Except(drawn).Select(id => $"'{id}' is bought and not drawn"),
            .. drawn.Where(id => id.Length > 0).Except(bought).Select(id => $"'{id}' is drawn and not bought"),
            .. terminals.Except(ends).Select(t => $"nothing is joined to {t.Item2} of {t.Item1}"),
            .. ends.Except(terminals).Select(t => $"a joint ends at {t.Item2} of {t.Item1}, which is not there"),
            .. scheme.Components.GroupBy(c => c.Name).Where(g => g.Skip(1).Any()).Select(g => $"two components are called {g.Key}"),
        ];
    }
}
