using DesignSearch.Climate.Sun;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;
using DesignSearch.Season.House;

namespace DesignSearch.Runs.Checking;

/// <summary>Reads a case back in plain lines, so that a slip no rule can catch is seen by the person who made it.</summary>
internal static class ReadBack
{
    private const int DecemberSolstice = 355;
    private const int JuneSolstice = 172;
    private const double DegPerRad = 180 / Math.PI;
    private const int Directions = 8;

    /// <summary>Ten lines or so.</summary>
    /// <param name="scenario">The case.</param>
    /// <param name="winters">Its winters.</param>
    public static IReadOnlyList<string> Of(Scenario scenario, WinterSet winters)
    {
        var house = scenario.Greenhouse;
        var plant = LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices)).Installation;
        var lossWPerK = HeldHouse.LossWPerK(plant, HeldNight.Frosty, scenario.Assumptions, scenario.Place.ElevationM);
        var lowest = winters.Winters.MinBy(w => w.Winter.AirC.Min()).Winter;
        return
        [
            ReadBackWords.Place(scenario.Place),
            ReadBackWords.Sun(NoonSunDeg(scenario.Place.LatitudeDeg), scenario.Place.LatitudeDeg, Horizon(scenario)),
            ReadBackWords.House(house),
            .. ShapeBackWords.Of(house),
            ReadBackWords.Loss(house, lossWPerK, HouseLoss.CoefficientWPerK(plant), RoomGivesW(house, plant), lowest.AirC.Min()),
            ReadBackWords.Inside(house.Contents),
            .. house.Fit is { } fit ? new[] { ReadBackWords.Fitted(fit, HouseLoss.CoefficientWPerK(BareHouse.Numbers(house))) } : [],
            ReadBackWords.Limit(house, scenario.Season),
            ReadBackWords.Climate(scenario.Climate),
            ReadBackWords.HardNight(lowest.Name, lowest.AirC.Min()),
            "Snow      " + SnowSentence.Of(scenario, winters.Winters.Select(w => w.Winter)),
            ReadBackWords.Money(scenario.Money),
            ReadBackWords.Current(scenario.Site),
            ReadBackWords.Room(scenario.Site),
            ReadBackWords.Allowed(scenario),
        ];
    }

    // The sun stands lowest at noon in December in the north, in June in the south.
    private static double NoonSunDeg(double latitudeDeg) =>
        Math.Max(0, 90 - Math.Abs(latitudeDeg - DegPerRad * DailySun.DeclinationRad(latitudeDeg >= 0 ? DecemberSolstice : JuneSolstice)));

    private static double RoomGivesW(Greenhouse house, Installation plant) =>
        house.BackWall is { Behind: BehindWall.HeatedRoom } wall ? plant.House.Wall.ConductanceWPerK * (wall.RoomC - house.FrostLimitC) : 0;

    private static double Horizon(Scenario scenario) =>
        scenario.Site.HorizonDeg.Count == Directions ? scenario.Site.HorizonDeg[scenario.Place.LatitudeDeg >= 0 ? Directions / 2 : 0] : 0;
}
