using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

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
            .. WaterPaths(scheme).SelectMany(path => WaterFaults(path, parts)),
            .. scheme.Components.GroupBy(c => c.Name).Where(g => g.Skip(1).Any()).Select(g => $"two components are called {g.Key}"),
        ];
    }

    // Components that water joins, directly or through others.
    private static IEnumerable<IReadOnlyList<Component>> WaterPaths(Scheme scheme)
    {
        var byName = scheme.Components.GroupBy(c => c.Name).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var wet = scheme.Joints.Where(j => j.Medium == Medium.Water && byName.ContainsKey(j.From) && byName.ContainsKey(j.To)).ToList();
        var left = wet.SelectMany(j => new[] { j.From, j.To }).ToHashSet(StringComparer.Ordinal);
        while (left.Count > 0)
        {
            var (path, next) = (new HashSet<string>(StringComparer.Ordinal), new Queue<string>([left.First()]));
            while (next.TryDequeue(out var name))
            {
                if (!path.Add(name))
                    continue;
                left.Remove(name);
                foreach (var joint in wet.Where(j => j.From == name || j.To == name))
                    next.Enqueue(joint.From == name ? joint.To : joint.From);
            }

            yield return [.. path.Select(n => byName[n])];
        }
    }

    // Whatever water stands in can be emptied, lets its air out, and has an answer to frost where any of it is outdoors.
    private static IEnumerable<string> WaterFaults(IReadOnlyList<Component> path, IReadOnlyList<NeededPart> parts)
    {
        var ids = path.SelectMany(c => c.With.Append(c.PartId)).ToHashSet(StringComparer.Ordinal);
        var there = parts.Where(p => ids.Contains(p.Part.Id)).Select(p => p.Part).ToList();
        bool Has(params SmallPartRole[] roles) => there.OfType<SmallPart>().Any(p => roles.Contains(p.Role));
        var name = path[0].Name;
        if (!Has(SmallPartRole.BallValve, SmallPartRole.FillSet, SmallPartRole.DrainPoint))
            yield return $"the water of {name} cannot be drained";
        if (!Has(SmallPartRole.AirVent, SmallPartRole.HeaderTank))
            yield return $"the water of {name} lets no air out";
        var answered = there.Any(p => p is FreezeProtection or Antifreeze) || Has(SmallPartRole.AntifreezeConcentrate);
        if (path.Any(c => c.Spot == Spot.Outdoors) && !answered)
            yield return $"the water of {name} freezes";
    }
}
