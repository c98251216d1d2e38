using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Search.Engine;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Where winters are mild and dull and current is cheap, a plain heater must win, however many collectors are offered.</summary>
public sealed class DullPlaceTests
{
    [Fact]
    public void A_mild_and_dull_place_with_cheap_current_buys_no_collector()
    {
        // Invented: the edge of a grey sea at 53° north.
        using var small = new SmallScenario(
            ("latitude_deg = 46.3", "latitude_deg = 53.5"),
            ("mean_air_c = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7, -1.7]", "mean_air_c = [4.8, 4.9, 6.6, 8.8, 11.9, 14.6, 16.6, 16.4, 14.1, 10.9, 7.4, 5.4]"),
            ("mean_daily_low_c = [-8.1, -7.2, -3.0, 1.4, 5.8, 9.3, 11.2, 10.9, 7.6, 3.1, -1.8, -6.4]", "mean_daily_low_c = [2.1, 2.0, 3.0, 4.4, 7.1, 9.9, 11.9, 11.9, 10.0, 7.4, 4.4, 2.6]"),
            ("sun_kwh_per_m2_day = [1.75, 2.70, 3.90, 4.70, 5.60, 6.10, 6.30, 5.50, 4.20, 2.80, 1.80, 1.45]", "sun_kwh_per_m2_day = [0.6, 1.2, 2.4, 3.8, 4.9, 5.0, 4.8, 4.1, 2.9, 1.6, 0.8, 0.5]"),
            ("wind_m_per_s = [1.4, 1.6, 1.9, 2.1, 1.9, 1.8, 1.7, 1.6, 1.5, 1.4, 1.5, 1.4]", "wind_m_per_s = [4.5, 4.3, 4.2, 3.9, 3.7, 3.5, 3.4, 3.4, 3.6, 3.9, 4.1, 4.3]"),
            ("humidity_pct = [80, 76, 70, 68, 70, 71, 71, 74, 78, 81, 83, 83]", "humidity_pct = [88, 86, 82, 79, 78, 79, 80, 82, 84, 87, 89, 89]"),
            ("lowest_known_c = -18.5\n", ""),
            ("character = \"dry inland\"", "character = \"maritime or valley\""),
            // A collector with the electrician counted is dearer than the sample's budget; here it may be.
            ("budget = 4200", "budget = 6000"),
            ("tariff_per_kwh = 0.42", "tariff_per_kwh = 0.15"));
        var scenario = small.Read();
        var problem = new LayoutProblem(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        var result = new SearchEngine(problem, new SearchSettings { MaxEvaluations = 5000, EnumerateUpTo = 5000, BestByMerit = 5000 }).Run();
        Assert.True(result.IsExact);
        var holding = result.BestByMerit.Where(p => p.Evaluation.TotalViolation == 0 && p.Evaluation.Objectives[1] == 0)
            .Select(p => (Layout: problem.Space.At(p.Point), Cost: p.Evaluation.Objectives[0])).ToList();
        double Cheapest(bool collector) => holding.Where(h => h.Layout.Has(SolarChoices.Collector) == collector).Min(h => h.Cost);
        Assert.True(Cheapest(collector: true) > 1.5 * Cheapest(collector: false), FormattableString.Invariant($"with a collector {Cheapest(true):0}, without {Cheapest(false):0}"));
        Assert.Contains(holding.MinBy(h => h.Cost).Layout.Awake, a => a.Choice.Key == "heater" && !a.Value.IsNone);
    }
}
