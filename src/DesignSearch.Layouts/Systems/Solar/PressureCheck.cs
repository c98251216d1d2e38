using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Whether everything closed has its relief, its expansion and its vent.</summary>
internal static class PressureCheck
{
    private const double Tiny = 1e-9;

    /// <summary>The check; null where all stands open to the air.</summary>
    public static Check? Of(SolarLoop solar, IReadOnlyList<NeededPart> parts)
    {
        if (solar.ClosedCount == 0)
            return null;
        var (reliefs, litres, vents) = (0m, 0m, 0m);
        for (var i = 0; i < parts.Count; i++)
        {
            var (part, quantity) = (parts[i].Part, parts[i].Quantity);
            reliefs += part is ReliefValve ? quantity : 0;
            litres += part is ExpansionVessel vessel ? quantity * (decimal)vessel.Litres : 0;
            vents += part is SmallPart { Role: SmallPartRole.AirVent } ? quantity : 0;
        }

        var wanted = (solar.ClosedLoop?.WantedL ?? 0) + (solar.TankCount * (solar.ClosedTank?.WantedL ?? 0));
        var share = ((double)litres / wanted) - 1;
        var passed = reliefs >= solar.ClosedCount && share >= -Tiny && vents >= 1;
        var words = SolarCheckWords.Pressure(solar, (reliefs, litres, vents));
        return SolarRules.Pressure.Found(passed, passed ? Math.Max(0, share) : share < -Tiny ? share : -1, words);
    }
}
