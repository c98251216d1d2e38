using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>What nobody knows for sure of a house, of the sky over it and of the soil under it; each system brings its own.</summary>
internal static class Unknowns
{
    private const double LessLoss = 0.8;
    private const double MoreLoss = 1.2;
    private const double HalfTheLeaks = 0.5;
    private const double TwiceTheLeaks = 2;

    // A clear-sky formula misses by some 15 W/m² (from memory), which are about 5 K of a winter sky.
    private const double SkyK = 5;
    private const double DrySoilWPerMK = 0.5;
    private const double WetSoilWPerMK = 2;

    /// <summary>The loss of cover and edge, as a factor.</summary>
    public static PlantDoubt Loss { get; } = new(
        new(DoubtWords.Loss, 1, LessLoss, MoreLoss, DoubtWords.LossWhy, DoubtWords.CoverLoses),
        (plant, factor) => plant with
        {
            House = plant.House with { CoverAreaM2 = factor * plant.House.CoverAreaM2, EdgeLossWPerMK = factor * plant.House.EdgeLossWPerMK },
        });

    /// <summary>The leaks, as a factor.</summary>
    public static PlantDoubt Leaks { get; } = new(
        new(DoubtWords.Leaks, 1, HalfTheLeaks, TwiceTheLeaks, DoubtWords.LeaksWhy, DoubtWords.AirLeaks),
        (plant, factor) => plant with
        {
            House = plant.House with
            {
                AirChangesPerHour = factor * plant.House.AirChangesPerHour,
                AirChangesPerHourPerMPerS = factor * plant.House.AirChangesPerHourPerMPerS,
            },
        });

    /// <summary>By how much the sky is colder than reckoned [K].</summary>
    public static DoubtfulFigure Sky { get; } = new(DoubtWords.Sky, 0, -SkyK, SkyK, DoubtWords.SkyWhy, DoubtWords.ColderSky);

    /// <summary>Conductivity of the soil [W/(m·K)].</summary>
    /// <param name="scenario">Whose figure is the usual one.</param>
    public static DoubtfulFigure Soil(Scenario scenario)
    {
        var usual = scenario.Assumptions.SoilConductivityWPerMK;
        return new(
            DoubtWords.Soil, usual, Math.Min(DrySoilWPerMK, usual), Math.Max(WetSoilWPerMK, usual), DoubtWords.SoilWhy,
            w => w < usual ? DoubtWords.DrySoil : DoubtWords.WetSoil);
    }

    /// <summary>The scenario with another soil.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="conductivityWPerMK">Conductivity of the soil [W/(m·K)].</param>
    public static Scenario WithSoil(Scenario scenario, double conductivityWPerMK) =>
        scenario with { Assumptions = scenario.Assumptions.With(HouseAssumptions.SoilConductivityWPerMK, conductivityWPerMK) };

    /// <summary>What is in doubt about a plant: its house, then its systems.</summary>
    /// <param name="built">The layout.</param>
    public static IEnumerable<PlantDoubt> Of(BuiltLayout built) => OfHouse(built.Fit).Concat(built.Systems.SelectMany(s => s.Doubts));

    // Where the loss was measured, cover and leaks are known together, as well as the log told them.
    private static PlantDoubt[] OfHouse(HouseFit? fit) => fit is { Loss.IsLearnt: true } ? [Fitted(fit.Loss)] : [Loss, Leaks];

    private static PlantDoubt Fitted(FittedFigure loss) => new(
        new(DoubtWords.Fitted, 1, loss.Low / loss.Value, loss.High / loss.Value, DoubtWords.FittedWhy, DoubtWords.HouseLoses),
        (plant, factor) => plant with { House = HouseFit.Changed(plant.House, factor) });
}
