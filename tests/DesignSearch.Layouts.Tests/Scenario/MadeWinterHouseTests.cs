using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>
/// Winters made from twelve means alone, through the whole house: as much frost as on the station's own hours, and the same side of "holds". What the
/// station's file gives was simulated once, with the same house and season.
/// </summary>
public sealed class MadeWinterHouseTests
{
    private const string Source = "the station's own typical-year hours (NSRDB update 1991-2005, TMY3), simulated once with the same house";
    private const string RunsIn = "WinterMaker.Synthetic";

    // Twenty seeds leave the mean of Greensboro's lined house uncertain by 0.02, a hundred by less than 0.01.
    private static readonly int Seeds = Longer.Many("DESIGNSEARCH_WINTERS", usual: 20, longer: EnoughSeeds);
    private static readonly int SameSide = 3 * Seeds / 4;

    private const int EnoughSeeds = 100;

    // Under this much frost a ratio says little [K·h].
    private const double EnoughFrostKh = 300;

    /// <summary>
    /// One site and what its file gives: frost in the bare and in the lined house, whether a 3 kW heater and whether collectors hold, the lowest hour.
    /// </summary>
    /// <param name="Name">Short name.</param>
    /// <param name="LatitudeDeg">North positive.</param>
    /// <param name="LongitudeDeg">East positive.</param>
    /// <param name="BareKh">Frost degree-hours [K·h].</param>
    /// <param name="LinedKh">The same with a lining.</param>
    /// <param name="HeaterHolds">Lined, with a 3 kW heater.</param>
    /// <param name="CollectorHolds">Lined and covered by night, with two collectors and a tank.</param>
    /// <param name="FieldHolds">Lined, with four collectors and a tank, no night cover.</param>
    /// <param name="LowestC">Lowest hour outside [°C].</param>
    /// <param name="Misses">What is known to lie outside.</param>
    public sealed record Site(
        string Name, double LatitudeDeg, double LongitudeDeg, double BareKh, double LinedKh, bool HeaterHolds, bool CollectorHolds, bool FieldHolds, double LowestC, params string[] Misses);

    // Greensboro's file leaves 16 K·h with two collectors and a night cover; its made winters leave 13 in the mean, most of them none and a few much: three dark days in
    // February, before the coldest night, are one winter's chance. Over ten open winters the sun of the darkest tenth of the cold spells of three days is that of the files
    // (1.02 and 1.03 kWh/m² a day), and no figure of the climate tells where it is less. Tried without effect: the file's own tie of clear and cold and its own memory, month
    // by month. The frost of its lined house strays by a tenth from one made winter to the next: the file's lies 1.2 such strays above the mean.
    public static TheoryData<Site> Sites =>
    [
        new("sand point", 55.317, -160.517, 4298.2, 3462.6, true, false, false, -10.6),
        new("greensboro", 36.1, -79.95, 2090.9, 1485.7, true, false, false, -16.7, "lined", "collector", "field"),
        new("albuquerque", 35.04, -106.62, 1048.9, 473.8, true, true, true, -8.6, "lined"),
        new("sacramento", 38.5, -121.5, 28.8, 7.7, true, true, true, -2.0),
        new("medford", 42.19, -122.7, 838.7, 426.6, true, true, true, -9.4),
        new("minneapolis", 44.883, -93.233, 13545.8, 11614.8, false, false, false, -30.85),
        new("redmond", 44.25, -121.167, 3207.3, 2209.5, true, false, false, -18.05),
    ];

    [Theory]
    [MemberData(nameof(Sites))]
    public void A_house_fares_as_on_the_stations_own_hours(Site site)
    {
        var station = StationTable.Nearest(site.LatitudeDeg, site.LongitudeDeg, 1)[0];
        Assert.True(station.DistanceKm(site.LatitudeDeg, site.LongitudeDeg) < 1, station.Place.Name);
        using var small = new SmallScenario(
            ("horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", "horizon_deg = [0, 0, 0, 0, 0, 0, 0, 0]"),
            ("[[winters]]\nname = \"hard\"\nkind = \"hard\"\nweight = 0.1\nreturn_years = 10\n", ""));
        var read = small.Read();
        var winters = Enumerable.Range(1, Seeds).AsParallel().AsOrdered()
            .Select(seed => Houses(read with { Place = station.Place, Climate = new ClimateSource(null, new MonthlyClimate(station.Place, station.Months), "", (ulong)seed) }))
            .ToList();

        double Mean(Func<(Outcome[] Houses, double LowestC), double> figure) => winters.Average(figure);
        var same = $"seeds of {Seeds} on the same side of holding as the file";
        if (site.BareKh > EnoughFrostKh)
            Tell(site, "bare", $"frost degree-hours in the bare house over those on the file, mean of {Seeds} seeds", 0.9, 1.15, Mean(w => w.Houses[0].FrostDegreeHoursKh) / site.BareKh);
        if (site.LinedKh > EnoughFrostKh)
            Tell(site, "lined", $"frost degree-hours in the lined house over those on the file, mean of {Seeds} seeds", 0.9, 1.15, Mean(w => w.Houses[1].FrostDegreeHoursKh) / site.LinedKh);
        Tell(site, "heater", same, SameSide, Seeds, winters.Count(w => (w.Houses[2].FrostHours == 0) == site.HeaterHolds));
        Tell(site, "collector", same, SameSide, Seeds, winters.Count(w => (w.Houses[3].FrostHours == 0) == site.CollectorHolds));
        Tell(site, "field", same, SameSide, Seeds, winters.Count(w => (w.Houses[4].FrostHours == 0) == site.FieldHolds));
        Tell(site, "lowest", $"lowest hour outside, mean of {Seeds} seeds, less the file's [K]", -1.5, 1.5, Mean(w => w.LowestC) - site.LowestC);
    }

    private static void Tell(Site site, string what, string quantity, double low, double high, double ours)
    {
        var id = $"winter through a house {site.Name} {what}";
        // What lies just outside by the hundred may lie inside by twenty: it is judged by the hundred alone.
        if (site.Misses.Contains(what) && Seeds < EnoughSeeds)
            return;
        if (site.Misses.Contains(what))
            Validation.Missed(id, quantity, low, high, ours, Source, RunsIn);
        else
            Validation.Within(id, quantity, low, high, ours, Source, RunsIn);
    }

    // Bare; lined; lined with a heater; lined and covered, with two collectors and a tank; lined, with four.
    private static (Outcome[] Houses, double LowestC) Houses(Scenario scenario)
    {
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario, asRecorded: true));
        Layout[] layouts =
        [
            Layout.Bare(scenario.Systems.Choices),
            SmallScenario.Of(scenario, ("lining", "bubble-lining-large")),
            SmallScenario.Of(scenario, ("lining", "bubble-lining-large"), ("heater", "fan-heater-3kw"), ("heater_set_c", 4)),
            SmallScenario.Solar(scenario, ("lining", "bubble-lining-large"), ("night_cover", "aluminised-hand")),
            SmallScenario.Solar(scenario, ("lining", "bubble-lining-large"), ("collector_count", 4)),
        ];
        var outcomes = assessor.Simulate([.. layouts.Select(l => assessor.Price(l).Built)]);
        return ([.. outcomes.Select(o => o[0])], assessor.Winters.LowestOutsideC);
    }
}
