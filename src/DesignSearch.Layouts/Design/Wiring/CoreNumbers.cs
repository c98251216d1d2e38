using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>
/// Numbers cables, cores, terminals and fuses: the one place, which table, file and picture read. Cables W1, W2, … and fuses F1, F2, …
/// stand in the order of the wiring table; cores are numbered from 1 in each cable in the order of what they carry; terminals from 1 in
/// each box in the order of cables and cores, X0 on the mains and X1 on low voltage.
/// </summary>
public static class CoreNumbers
{
    /// <summary>What each core of a device's cable carries, spare ones among it.</summary>
    /// <param name="circuit">The device.</param>
    public static IReadOnlyList<string> Carried(Circuit circuit)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        IReadOnlyList<string> wanted = circuit switch
        {
            { Volts: 0 } => CoreWords.EitherWay,
            { Reverses: true } => CoreWords.Reversing,
            { Volts: >= SupplyPlan.MainsVolts, IsControl: true } => CoreWords.MainsContact,
            { Volts: >= SupplyPlan.MainsVolts } => CoreWords.Mains,
            { Cores: 3 } => CoreWords.Sensor,
            { Cores: > 3 } => CoreWords.Contact,
            _ => CoreWords.Low,
        };
        var cores = Math.Max(circuit.Cable?.Cores ?? 0, circuit.Cores);
        return [.. Enumerable.Range(0, Math.Max(cores, wanted.Count)).Select(i => i < wanted.Count ? wanted[i] : CoreWords.Spare)];
    }

    /// <summary>The rows with their numbers.</summary>
    /// <param name="wires">The rows in the order of the table, what their cores carry in them, their fuses by any name.</param>
    public static IReadOnlyList<Wire> Of(IReadOnlyList<Wire> wires)
    {
        ArgumentNullException.ThrowIfNull(wires);
        var (cables, fuses, next) = (0, new List<string>(), new Dictionary<string, int>(StringComparer.Ordinal));
        var numbered = new List<Wire>(wires.Count);
        // Without low voltage there is no control box: a sensor's cable goes right to what it serves.
        var hasControlBox = wires.Any(w => w.Volts is > 0 and < SupplyPlan.MainsVolts);
        foreach (var wire in wires)
        {
            if (wire.FuseTag.Length > 0 && !fuses.Contains(wire.FuseTag))
                fuses.Add(wire.FuseTag);
            var box = wire.Volts >= SupplyPlan.MainsVolts ? CoreWords.MainsStrip : CoreWords.LowStrip;
            var ends = new List<CoreEnd>();
            for (var cable = 1; cable <= (wire.Carries.Count > 0 ? wire.Count : 0); cable++)
            {
                for (var core = 1; core <= wire.Carries.Count; core++)
                {
                    var number = wire.EndsAtDevice || (wire.Volts == 0 && !hasControlBox) ? 0 : next[box] = next.GetValueOrDefault(box) + 1;
                    var terminal = number > 0 ? Written.Sentence($"{box}:{number:0}") : "";
                    ends.Add(new(cable, core, terminal, wire.Carries[core - 1]));
                }
            }

            numbered.Add(wire with
            {
                Tag = ends.Count > 0 ? Written.Sentence($"W{++cables:0}") : "",
                FuseTag = wire.FuseTag.Length > 0 ? Written.Sentence($"F{fuses.IndexOf(wire.FuseTag) + 1:0}") : "",
                Ends = ends,
            });
        }

        return numbered;
    }
}
