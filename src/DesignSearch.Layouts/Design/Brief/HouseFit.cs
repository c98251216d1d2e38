using DesignSearch.Season;
using DesignSearch.Season.House;
using DesignSearch.Season.InnerStores;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What a log of this very house says against its drawing; written by "fit", read from fitted.toml beside the scenario.</summary>
public sealed record HouseFit
{
    /// <summary>The whole loss of cover, leaks and edge as a factor on the drawing's.</summary>
    public required FittedFigure Loss { get; init; }

    /// <summary>Sun that stays in the house as a factor on the drawing's.</summary>
    public required FittedFigure Sun { get; init; }

    /// <summary>Heat that pots, beds and frame store [J/K]; 0 where the log did not show it.</summary>
    public required double StoreJPerK { get; init; }

    /// <summary>What goes between them and the air [W/K].</summary>
    public required double CouplingWPerK { get; init; }

    /// <summary>The log's files with the SHA-256 of each.</summary>
    public required IReadOnlyList<(string Name, string Sha256)> Log { get; init; }

    /// <summary>How many nights it rests on.</summary>
    public required int Nights { get; init; }

    /// <summary>The plant as this house is.</summary>
    /// <param name="plant">The plant by the drawing.</param>
    public Installation On(Installation plant) => Changed(plant, Loss.Value, Sun.Value, StoreJPerK, CouplingWPerK);

    /// <summary>A plant whose house loses, stores and takes sun otherwise.</summary>
    /// <param name="plant">The plant by the drawing.</param>
    /// <param name="loss">Factor on cover, leaks and edge.</param>
    /// <param name="sun">Factor on the sun that stays.</param>
    /// <param name="storeJPerK">Inner store [J/K]; 0 for none.</param>
    /// <param name="couplingWPerK">Its coupling to the air [W/K].</param>
    public static Installation Changed(Installation plant, double loss, double sun, double storeJPerK, double couplingWPerK)
    {
        ArgumentNullException.ThrowIfNull(plant);
        // What was learnt of the stores stands for all that the drawing says of them.
        var house = Changed(plant.House, loss, sun) with { Contents = ContentsNumbers.None };
        return (plant with { House = house }).With(new InnerStoreNumbers(storeJPerK, couplingWPerK));
    }

    /// <summary>The house as this one is, of the numbers that its drawing gives.</summary>
    /// <param name="house">The numbers by the drawing, with whatever skin.</param>
    public HouseNumbers On(HouseNumbers house) => Changed(house, Loss.Value, Sun.Value);

    /// <summary>A house that loses and takes sun otherwise: cover, leaks and edge alike, for no log can tell them apart.</summary>
    /// <param name="house">The house.</param>
    /// <param name="loss">Factor on cover, leaks and edge.</param>
    /// <param name="sun">Factor on the sun that stays.</param>
    public static HouseNumbers Changed(HouseNumbers house, double loss, double sun = 1)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house with
        {
            CoverAreaM2 = loss * house.CoverAreaM2,
            AirChangesPerHour = loss * house.AirChangesPerHour,
            AirChangesPerHourPerMPerS = loss * house.AirChangesPerHourPerMPerS,
            EdgeLossWPerMK = loss * house.EdgeLossWPerMK,
            LiningTransmittance = sun * house.LiningTransmittance,
        };
    }
}
