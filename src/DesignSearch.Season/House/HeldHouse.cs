using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.House;

/// <summary>What a house loses while it is held at a temperature: the season model's own block, run until nothing moves, the floor neither giving nor taking.</summary>
public static class HeldHouse
{
    private const double StepSeconds = 3600;
    private const int Steps = 60;

    // A body so large that the step does not move it [J/K].
    private const double Endless = 1e15;

    /// <summary>Heat through the cover and with leaking air, night cover open [W].</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="night">The night.</param>
    /// <param name="assumptions">The numbers chosen.</param>
    /// <param name="elevationM">Height above the sea [m].</param>
    public static double LossW(Installation plant, HeldNight night, SeasonAssumptions assumptions, double elevationM = 0)
    {
        ArgumentNullException.ThrowIfNull(plant);
        ArgumentNullException.ThrowIfNull(night);
        ArgumentNullException.ThrowIfNull(assumptions);
        var free = plant with { House = plant.House with { Wall = WallNumbers.None } };
        var terms = HouseTerms.From(free, assumptions) with { AirStore = Endless, FloorStore = 1, FloorSoil = 0, Edge = 0 };
        var block = new HouseBlock<Lane1>([terms], StepSeconds, night.InsideC, night.InsideC, night.InsideC, night.InsideC);
        var air = assumptions.AirVolumetricCapacityJPerM3K * WinterForcing.Density(night.OutsideC, elevationM);
        var forcing = new HourForcing(night.OutsideC, night.OutsideC - night.SkyBelowK, night.WindMPerS * assumptions.RoofWindFactor, 0, night.InsideC, air, 0);
        Span<Offer<Lane1>> offers = stackalloc Offer<Lane1>[HouseBlock<Lane1>.OwnOffers];
        for (var s = 0; s < Steps; s++)
        {
            block.Hour(forcing);
            block.Eliminate();
            block.Reduce(Lane1.Of(0));
            block.Decide(Lane1.Of(0), offers);
            block.Settle();
        }

        return Pack.At(block.Given(night.OutsideC, 1), 0);
    }

    /// <summary>The same over the difference of inside and outside, with the floor's edge and what its sources and a back wall in the open lose [W/K].</summary>
    /// <inheritdoc cref="LossW"/>
    public static double LossWPerK(Installation plant, HeldNight night, SeasonAssumptions assumptions, double elevationM = 0)
    {
        ArgumentNullException.ThrowIfNull(plant);
        ArgumentNullException.ThrowIfNull(night);
        var (house, wall) = (plant.House, plant.House.Wall);
        return LossW(plant, night, assumptions, elevationM) / (night.InsideC - night.OutsideC)
            + house.EdgeLossWPerMK * house.PerimeterM
            + (wall.HasRoomBehind ? 0 : wall.ConductanceWPerK)
            + plant.Sources.Sum(s => s.OutwardWPerK);
    }
}
