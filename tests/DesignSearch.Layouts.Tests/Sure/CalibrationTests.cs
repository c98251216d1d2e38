using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Testing;
using MathNet.Numerics.Distributions;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>
/// What is said of how sure a pick is, against two hundred winters that neither chose it nor told of it. The house is the sample's with four heaters to choose
/// from, moved to stations of the table; one on a usual day, two on the build machine, all ten by hand (<c>DESIGNSEARCH_PLACES=10</c>).
/// </summary>
public sealed class CalibrationTests
{
    private const int Winters = 200;
    private const int PlacesInTheBuild = 2;
    private const ulong NeverUsed = 900_000_001;

    // A range is right 19 times in 20; two hundred winters are not endless ones, so that somewhat fewer lie inside. More than this outside comes once in a hundred times.
    private const double Outside = 0.08;
    private const double OnceInAHundred = 0.99;

    private static readonly (double LatitudeDeg, double LongitudeDeg)[] Places =
    [
        (36.1, -79.95), (46.87, -113.99), (44.25, -121.17), (44.88, -93.23), (55.32, -160.52), (39.75, -104.87), (61.17, -150.02), (42.75, -73.80), (35.04, -106.62), (40.78, -111.97),
    ];

    private static int Tried => Longer.Many("DESIGNSEARCH_PLACES", usual: 1, longer: PlacesInTheBuild);

    [Fact]
    public void Picks_hold_in_as_many_other_winters_as_was_said()
    {
        var told = new List<string>();
        var (picks, inside) = (0, 0);
        foreach (var (latitudeDeg, longitudeDeg) in Places.Take(Tried))
        {
            var station = StationTable.Nearest(latitudeDeg, longitudeDeg, 1)[0];
            using var sample = new SureSample(0.9, 60, read => read with { Place = station.Place, Climate = new ClimateSource(null, new MonthlyClimate(station.Place, station.Months), "", 1) });
            Assert.True(sample.Found is not null, station.Place.Name);
            var draws = new DoubtDraws(sample.All.Scenario, DesignWinters.Drawn(sample.All.Scenario, Winters, NeverUsed), NeverUsed, 2);
            foreach (var (layout, chance) in sample.Found.Chances)
            {
                var held = draws.All(LayoutBuilder.Build(sample.All.Scenario, layout), 2).Count(o => o.FrostHours == 0) / (double)Winters;
                told.Add(FormattableString.Invariant($"{station.Place.Name}: told {chance.AtLeast:0.000} to {chance.AtMost:0.000}, held {held:0.000}"));
                picks++;
                inside += held >= chance.AtLeast && held <= chance.AtMost ? 1 : 0;
            }
        }

        var mayMiss = Enumerable.Range(0, picks + 1).First(n => Binomial.CDF(Outside, picks, n) >= OnceInAHundred);
        Assert.True(picks - inside <= mayMiss, string.Join('\n', told));
        if (Tried == PlacesInTheBuild)
        {
            Validation.Within(
                "sureness", "picks whose share of 200 other winters, doubts drawn, lies in the range that was told from 60, at two stations; by hand 21 of 22 at ten",
                picks - mayMiss, picks, inside, "interval of Wilson 1927; picks chosen by a third set of winters", "SurePicking");
        }
    }
}
