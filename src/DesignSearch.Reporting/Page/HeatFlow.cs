using DesignSearch.Layouts;
using DesignSearch.Season;

namespace DesignSearch.Reporting;

/// <summary>One way heat came in or went out over the season.</summary>
/// <param name="Letter">Sign in the bar and in the table.</param>
/// <param name="Name">The flow in plain words.</param>
/// <param name="ComesIn">True for a gain.</param>
/// <param name="Kwh">Amount, never below zero [kWh].</param>
internal sealed record HeatFlow(char Letter, string Name, bool ComesIn, double Kwh)
{
    /// <summary>Every flow of a layout, the mean of its winters by their weights; the same flows in the same order for every layout.</summary>
    public static IReadOnlyList<HeatFlow> Of(JudgedLayout layout)
    {
        var mean = (Func<EnergyLedger, double> flow) => layout.Winters.Sum(w => w.Weight * flow(w.Outcome.Ledger));
        var ground = mean(l => l.Ground);
        var house = mean(l => l.StoredInHouse);
        var loop = mean(l => l.StoredInLoop);
        return
        [
            new('A', "sun through the cover", true, mean(l => l.SunIntoHouse)),
            new('B', "sun on the collector", true, mean(l => l.SunIntoCollector)),
            new('C', "stand-by heater", true, mean(l => l.Heater)),
            new('D', "fans and pumps", true, mean(l => l.Auxiliary)),
            new('E', "out of the ground", true, Math.Max(0, -ground)),
            new('F', "out of house, barrels and tank", true, Math.Max(0, -house) + Math.Max(0, -loop)),
            new('G', "through the cover to the air", false, mean(l => l.CoverToAir)),
            new('H', "from the cover to the sky", false, mean(l => l.CoverToSky)),
            new('J', "with leaking air", false, mean(l => l.Leakage)),
            new('K', "through opened vents", false, mean(l => l.Vents)),
            new('L', "into the ground", false, Math.Max(0, ground)),
            new('M', "from the collector to the outside", false, mean(l => l.CollectorLoss)),
            new('N', "from the pipes to the outside", false, mean(l => l.PipeLoss)),
            new('P', "left in house, barrels and tank", false, Math.Max(0, house) + Math.Max(0, loop)),
        ];
    }
}
