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
        Sun = new Vector[n];
        (Beam, Even, AroundSun, Horizon, Ground) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
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

    /// <summary>Beam normal to the sun, hidden by the horizon or not [W/m²].</summary>
    public double[] Beam { get; }

    /// <summary>Even part of the sky's light [W/m²].</summary>
    public double[] Even { get; }

    /// <summary>Light around the sun, to be multiplied by the cosine of incidence [W/m²].</summary>
    public double[] AroundSun { get; }

    /// <summary>Light of the horizon band, to be multiplied by the sine of the tilt [W/m²].</summary>
    public double[] Horizon { get; }

    /// <summary>Light thrown up by the ground [W/m²].</summary>
    public double[] Ground { get; }

    /// <summary>The days as a sensor sees them.</summary>
    public IReadOnlyList<DayLight> Days(LightSensor sensor) => sensor == Usual ? usualDays : DayLight.Of(Winter, sensor);

    /// <summary>Where the sun stands in an hour that has light.</summary>
    public Vector SunAt(int hour) => Sun[place[hour]];

    private void Fill(int i, int h, HorizonProfile? horizon, SkySplit split)
    {
        var zenith = Winter.SunZenithDeg[h];
        var diffuse = Winter.DiffuseWPerM2[h];
        var hidden = horizon is not null && 90 - zenith < horizon.AltitudeAt(Winter.SunAzimuthDeg[h]);
        Sun[i] = Vector.Towards(zenith, Winter.SunAzimuthDeg[h]);
        Beam[i] = hidden ? 0 : Winter.BeamNormalWPerM2[h];
        Ground[i] = Winter.GlobalWPerM2[h] * Winter.GroundReflectance[h];
        if (diffuse <= 0)
            return;
        var (beam, above) = (Winter.BeamNormalWPerM2[h], Winter.ExtraterrestrialNormalWPerM2[h]);
        var sky = split == SkySplit.Perez ? SkyModel.Perez(diffuse, beam, above, AirMass.KastenYoung(zenith), zenith) : new(beam / above, 0, 0, 0);
        Even[i] = diffuse * (1 - sky.AroundSun) * (horizon?.SkyShare ?? 1);
        AroundSun[i] = hidden ? 0 : diffuse * sky.AroundSun * SkyModel.SunRatio(1, zenith);
        Horizon[i] = diffuse * sky.Horizon;
    }
}
