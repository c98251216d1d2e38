namespace DesignSearch.Season;

/// <summary>What one hour does to collector and pipes.</summary>
/// <param name="OutsideC">Outside air [°C].</param>
/// <param name="WindMPerS">Wind at the collector [m/s].</param>
/// <param name="AbsorbedW">Sun absorbed by all collectors [W].</param>
internal readonly record struct LoopHour(double OutsideC, double WindMPerS, double AbsorbedW)
{
    public static LoopHour Of(WinterForcing forcing, LayoutCase layout, int h)
    {
        var collector = layout.Installation.Collector;
        var absorbed = collector.AreaM2 > 0 && layout.Plane is { } plane
            ? collector.AreaM2 * CollectorEfficiency.AbsorbedWPerM2(collector, plane.BeamWPerM2[h], plane.SkyWPerM2[h] + plane.GroundWPerM2[h], plane.CosIncidence[h])
            : 0;
        return new(forcing.Winter.AirC[h], forcing.RoofWindMPerS[h], absorbed);
    }
}
