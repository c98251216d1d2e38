using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>Whether everything closed has its relief, its expansion and its vent.</summary>
internal static class PressureCheck
{
    // Water and glycol grow by some 4 % from cold to near boiling; a vessel takes up about half of its size (common practice, no source).
    private const double Growth = 0.04;
    private const double TakesUp = 0.5;

    /// <summary>The check; null where all stands open to the air.</summary>
    public static Check? Of(BuiltLayout built, SolarLoop solar)
    {
        var loop = solar.Protection.Method == FreezeMethod.Antifreeze;
        var closed = (loop ? 1 : 0) + (solar.Tank.IsClosed ? solar.TankCount : 0);
        if (closed == 0)
            return null;
        var (reliefs, vessels, vents) = (Count(built, SmallPartRole.ReliefValve), Count(built, SmallPartRole.ExpansionVessel), Count(built, SmallPartRole.AirVent));
        var passed = reliefs >= closed && vessels >= closed && vents >= 1;
        var litres = (loop ? solar.LoopLitres : 0) + (solar.Tank.IsClosed ? solar.TankCount * solar.Tank.VolumeL : 0);
        return Check.Of("pressure-safety", "relief, expansion and vent", passed, passed ? 0 : -1, $"What is closed holds {litres:0} L, which grow by some {litres * Growth:0.0} L when they warm and want {litres * Growth / TakesUp:0} L of expansion vessel in all; relief valves {reliefs:0}, vessels {vessels:0} for {closed:0}, vents {vents:0}.", "Safety rules for closed solar loops, the local code decides; growth 4 % and half of the vessel: common practice, no source");
    }

    private static decimal Count(BuiltLayout built, SmallPartRole role) => built.Parts.Where(p => p.Part is SmallPart part && part.Role == role).Sum(p => p.Quantity);
}
