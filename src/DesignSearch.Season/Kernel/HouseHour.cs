namespace DesignSearch.Season;

/// <summary>What one hour does to the house; held through all its steps.</summary>
internal struct HouseHour
{
    public double OutsideC, SkyC, GroundC;

    /// <summary>Cover from inner to outer surface, lining and night cover included [K/W per house].</summary>
    public double SheetKPerW;

    /// <summary>Convection outside, ε σ A times the share of sky, and of surroundings.</summary>
    public double ConvectionWPerK, SkyWPerK4, RestWPerK4;

    public double LeakageWPerK;

    /// <summary>Sun into air, floor, barrels, and all together [W].</summary>
    public double SunAirW, SunFloorW, SunBarrelsW, SunW;

    private const double StefanBoltzmann = 5.670374419e-8;

    public static HouseHour Of(WinterForcing forcing, Installation layout, int h)
    {
        var (house, winter, a) = (layout.House, forcing.Winter, forcing.Assumptions);
        var sheet = house.CoverResistanceM2KPerW + house.LiningResistanceM2KPerW
            + (winter.SunZenithDeg[h] >= 90 ? house.NightCoverResistanceM2KPerW : 0);
        var radiance = a.CoverEmissivity * StefanBoltzmann * house.CoverAreaM2;
        var changes = house.AirChangesPerHour + house.AirChangesPerHourPerMPerS * forcing.RoofWindMPerS[h];
        var sun = forcing.SunW[h] * house.LiningTransmittance;
        var barrels = layout.Barrels.WaterKg > 0 ? sun * layout.Barrels.SunShare : 0;
        var floor = (sun - barrels) * a.SunFloorShare;
        return new HouseHour
        {
            OutsideC = winter.AirC[h],
            SkyC = winter.SkyC[h],
            GroundC = forcing.GroundC[h],
            SheetKPerW = sheet / house.CoverAreaM2,
            ConvectionWPerK = forcing.FilmWPerM2K[h] * house.CoverAreaM2,
            SkyWPerK4 = radiance * house.SkyViewFactor,
            RestWPerK4 = radiance * (1 - house.SkyViewFactor),
            LeakageWPerK = a.AirVolumetricCapacityJPerM3K * house.VolumeM3 * changes / 3600,
            SunW = sun,
            SunBarrelsW = barrels,
            SunFloorW = floor,
            SunAirW = sun - barrels - floor,
        };
    }
}
