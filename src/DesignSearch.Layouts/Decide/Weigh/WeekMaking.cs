using DesignSearch.Layouts.Assess;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Takes the week that tries a layout hardest, hour by hour.</summary>
internal static class WeekMaking
{
    private const int WeekHours = 7 * 24;

    public static Week Of(Trial pick, Trial bare, LayoutAssessor assessor)
    {
        var winters = assessor.Winters.Winters;
        var w = Enumerable.Range(0, winters.Count).OrderByDescending(i => winters[i].Winter.StressWeek is not null).ThenBy(i => pick.Outcomes[i].LowestAirC).First();
        var (winter, _, forcing) = winters[w];
        var first = winter.StressWeek?.First ?? pick.Outcomes[w].ColdestHour / 24 * 24 - WeekHours / 2;
        first = Math.Clamp(first, winter.WarmUpHours, winter.Hours - WeekHours);
        var bareAir = new double[WeekHours];
        Each(bare, (i, row) => bareAir[i] = row.AirMeanC);
        var hours = new WeekHour[WeekHours];
        Each(pick, (i, row) => hours[i] = new(
            Math.Round(row.OutsideC, 2), Math.Round(row.PlantsC, 2), Math.Round(bareAir[i], 2), Math.Round(row.TankTopC, 1),
            Math.Round(winter.GlobalWPerM2[row.Hour]), Math.Round(row.PumpShare, 2), Math.Round(row.ElectricHeatW)));
        return new(winter.Name, winter.Start.AddHours(first), hours) { Plants = pick.Priced.Built.Plants };

        void Each(Trial trial, Action<int, HourRow> take)
        {
            var layout = new LayoutCase(trial.Priced.Built.Installation, assessor.Plane(trial.Priced.Built, winter));
            SeasonSimulator.Run(forcing, layout, row =>
            {
                if (row.Hour >= first && row.Hour < first + WeekHours)
                    take(row.Hour - first, row);
            });
        }
    }
}
