namespace DesignSearch.Climate.Plane;

/// <summary>What falls on one plane through one winter, hour by hour, and how often the plane moved for it.</summary>
/// <remarks>What lying snow keeps off is taken off. Every array has as many entries as the winter has hours. Immutable once made.</remarks>
public sealed class PlaneIrradiance
{
    /// <summary>Beam on the plane, hour mean [W/m²].</summary>
    public required double[] BeamWPerM2 { get; init; }

    /// <summary>Sky-diffuse on the plane, hour mean [W/m²].</summary>
    public required double[] SkyWPerM2 { get; init; }

    /// <summary>Reflected from the ground, hour mean [W/m²].</summary>
    public required double[] GroundWPerM2 { get; init; }

    /// <summary>Cosine of the beam's angle of incidence at mid-hour; 0 or below when the sun is behind the plane.</summary>
    public required double[] CosIncidence { get; init; }

    /// <summary>Moves in the season (warm-up not counted): each start of the drive is one.</summary>
    public required int Moves { get; init; }

    /// <summary>Way turned in the season, both directions added [°].</summary>
    public required double TravelDeg { get; init; }

    /// <summary>Everything that falls on the plane from an hour on [kWh/m²].</summary>
    /// <param name="fromHour">First hour, for instance the winter's warm-up.</param>
    public double KwhPerM2(int fromHour)
    {
        var sum = 0.0;
        for (var h = fromHour; h < BeamWPerM2.Length; h++)
            sum += BeamWPerM2[h] + SkyWPerM2[h] + GroundWPerM2[h];
        return sum / 1000;
    }
}
