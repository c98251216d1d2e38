using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Season;

namespace DesignSearch.Reporting.Page;

/// <summary>One way heat came in or went out over the season.</summary>
/// <param name="Letter">Sign in the bar and in the table.</param>
/// <param name="Name">The flow in plain words.</param>
/// <param name="ComesIn">True for a gain.</param>
/// <param name="Kwh">Amount, never below zero [kWh].</param>
internal sealed record HeatFlow(char Letter, string Name, bool ComesIn, double Kwh)
{
    /// <summary>Every flow of a layout, the mean of its winters by their weights; the same flows in the same order for every layout.</summary>
    /// <remarks>What can run either way stands twice, and one of the two is zero: under a clear sky, for instance, a cover is often colder than the outside air and takes heat from it.</remarks>
    public static IReadOnlyList<HeatFlow> Of(JudgedLayout layout)
    {
        var mean = (Func<EnergyLedger, double> flow) => layout.Winters.Sum(w => w.Weight * flow(w.Outcome.Ledger));
        var eitherWay = new (char InLetter, string In, char OutLetter, string Out, double Outwards)[]
        {
            ('E', "from the outside air into cover and solid wall", 'N', "through cover and solid wall to the outside air", mean(l => l.CoverToAir + l.Wall)),
            ('F', "from the sky into the cover", 'P', "from the cover to the sky", mean(l => l.CoverToSky)),
            ('G', "with warm air leaking in", 'Q', "with leaking air", mean(l => l.Leakage)),
            ('H', "with warm air through opened vents", 'R', "through opened vents", mean(l => l.Vents)),
            ('J', "out of the ground", 'S', "into the ground", mean(l => l.Ground)),
            ('K', "from the outside into the collector", 'T', "from the collector to the outside", mean(l => l.CollectorLoss)),
            ('L', "from the outside into the pipes", 'U', "from the pipes to the outside", mean(l => l.PipeLoss)),
            ('X', "from the outside into the compost heap", 'Y', "from the compost heap to the outside", mean(l => l.CompostLoss)),
            ('M', "out of house, barrels and tank", 'V', "left in house, barrels and tank", mean(l => l.StoredInHouse + l.StoredInLoop + l.StoredInCompost + l.StoredInBench)),
        };
        return
        [
            new('A', "sun through the cover", true, mean(l => l.SunIntoHouse)),
            new('B', "sun on the collector", true, mean(l => l.SunIntoCollector)),
            new('C', "stand-by heater", true, mean(l => l.Heater)),
            new('Z', "heated bench", true, mean(l => l.Bench)),
            new('D', "fans and pumps", true, mean(l => l.Auxiliary)),
            new('W', "rotting compost", true, mean(l => l.Compost)),
            .. eitherWay.Select(f => new HeatFlow(f.InLetter, f.In, true, Math.Max(0, -f.Outwards))),
            .. eitherWay.Select(f => new HeatFlow(f.OutLetter, f.Out, false, Math.Max(0, f.Outwards))),
        ];
    }
}
