namespace DesignSearch.Season;

/// <summary>Capacities [J/K] and conductances [W/K] of the house block that stay the same all season.</summary>
internal readonly record struct HouseCoefficients
{
    public required double AirJPerK { get; init; }
    public required double CoverJPerK { get; init; }
    public required double FloorJPerK { get; init; }
    public double MiddleJPerK { get; init; }
    public double DeepJPerK { get; init; }
    public double BarrelsJPerK { get; init; }
    public double AirToCover { get; init; }
    public double AirToFloor { get; init; }
    public double AirToBarrels { get; init; }
    public double FloorToCover { get; init; }
    public double FloorToMiddle { get; init; }
    public double MiddleToDeep { get; init; }
    public double DeepToGround { get; init; }
    public double Edge { get; init; }

    public static HouseCoefficients Of(HouseNumbers house, BarrelNumbers barrels, SeasonAssumptions a)
    {
        var (k, c) = (a.SoilConductivityWPerMK * house.FloorAreaM2, a.SoilVolumetricCapacityJPerM3K * house.FloorAreaM2);
        var (top, middle, deep) = (a.SoilSurfaceLayerM, a.SoilMiddleLayerM, a.SoilDeepLayerM);
        return new HouseCoefficients
        {
            AirJPerK = a.AirAndBenchCapacityJPerM2K * house.FloorAreaM2,
            CoverJPerK = house.CoverCapacityJPerM2K * house.CoverAreaM2,
            FloorJPerK = c * top,
            MiddleJPerK = c * middle,
            DeepJPerK = c * deep,
            BarrelsJPerK = barrels.WaterKg * 4186,
            AirToCover = a.InsideFilmConvectiveWPerM2K * house.CoverAreaM2,
            AirToFloor = a.FloorFilmConvectiveWPerM2K * house.FloorAreaM2,
            AirToBarrels = barrels.WaterKg > 0 ? a.BarrelFilmWPerM2K * barrels.SurfaceM2 : 0,
            FloorToCover = a.InsideFilmRadiativeWPerM2K * Math.Min(house.FloorAreaM2, house.CoverAreaM2),
            FloorToMiddle = k / ((top + middle) / 2),
            MiddleToDeep = k / ((middle + deep) / 2),
            DeepToGround = k / (deep / 2),
            Edge = house.EdgeLossWPerMK * house.PerimeterM,
        };
    }
}
