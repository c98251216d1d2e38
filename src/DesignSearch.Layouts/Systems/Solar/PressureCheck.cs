using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Whether everything closed has its relief, its expansion and its vent.</summary>
internal static class PressureCheck
{
    // Water and glycol grow by some 4 % from cold to near boiling; a vessel takes up about half of its size (common practice, no source).
    private const double Growth = 0.04;
    private const double TakesUp = 0.5;

    /// <summary>The check; null where all stands open to the air.</summary>
    public static Check? Of(SolarLoop solar, IReadOnlyList<NeededPart> parts)
    {
        var closed = solar.ClosedCount;
        if (closed == 0)
            return null;
        var (reliefs, vessels, vents) = (0m, 0m, 0m);
        foreach (var needed in parts)
        {
            if (needed.Part is not SmallPart small)
                continue;
            reliefs += small.Role == SmallPartRole.ReliefValve ? needed.Quantity : 0;
            vessels += small.Role == SmallPartRole.ExpansionVessel ? needed.Quantity : 0;
            vents += small.Role == SmallPartRole.AirVent ? needed.Quantity : 0;
        }

        var passed = reliefs >= closed && vessels >= closed && vents >= 1;
        var litres = (solar.StaysFull ? solar.LoopLitres : 0) + (solar.Tank.IsClosed ? solar.TankCount * solar.Tank.VolumeL : 0);
        var grows = litres * Growth;
        var words = SolarCheckWords.Pressure(litres, grows, grows / TakesUp, closed, (reliefs, vessels, vents));
        return SolarRules.Pressure.Found(passed, passed ? 0 : -1, words);
    }
}
