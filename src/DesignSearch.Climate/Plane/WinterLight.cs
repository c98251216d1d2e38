using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Plane;

/// <summary>Everything about a winter's light that does not depend on the plane, kept for its sunlit hours only.</summary>
internal sealed class WinterLight
{
    private static readonly LightSensor Usual = new();
    private readonly int[] place;
    private readonly List<DayLight> usualDays;

    public WinterLight(Winter winter, HorizonProfile? horizon, SkySplit split = SkySplit.Perez)
    {
        Winter = winter;
        usualDays = DayLight.Of(winter, Usual);
        place = new int[winter.Hours];
        Hour = [.. Enumerable.Range(0, winter.Hours).Where(h => winter.GlobalWPerM2[h] > 0)];
        var n = Hour.Length;
        (Sun, Light) = (new Vector[n], new SkyLight[n]);
        for (var i = 0; i < n; i++)
        {
            place[Hour[i]] = i;
            Fill(i, Hour[i], horizon, split);
        }
    }

    public Winter Winter { get; }

    /// <summary>Hour of the winter.</summary>
    public int[] Hour { get; }

    public Vector[] Sun { get; }

    /// <summary>The light that will fall on planes, hills allowed for.</summary>
    public SkyLight[] Light { get; }

    /// <summary>The days as a sensor sees them.</summary>
    public IReadOnlyList<DayLight> Days(LightSensor sensor) => sensor == Usual ? usualDays : DayLight.Of(Winter, sensor);

    /// <summary>Where the sun stands in an hour that has light.</summary>
    public Vector SunAt(int hour) => Sun[place[hour]];

    private void Fill(int i, int h, HorizonProfile? horizon, SkySplit split)
    {
        var (zenith, azimuth) = (Winter.SunZenithDeg[h], Winter.SunAzimuthDeg[h]);
        Sun[i] = Vector.Towards(zenith, azimuth);
        var mass = split == SkySplit.Perez ? AirMass.KastenYoung(zenith) : 1;
        var ground = Winter.GlobalWPerM2[h] * Winter.GroundReflectance[h];
        var above = Winter.ExtraterrestrialNormalWPerM2[h];
        var light = SkyLight.Of(split, Winter.BeamNormalWPerM2[h], Winter.DiffuseWPerM2[h], above, mass, zenith, ground);
        Light[i] = horizon is null ? light : light.Behind(90 - zenith < horizon.AltitudeAt(azimuth), horizon.SkyShare);
    }
}
