namespace DesignSearch.Climate.Plane;

/// <summary>The light of one hour before it falls on a plane [W/m²].</summary>
/// <param name="Beam">Normal to the sun.</param>
/// <param name="Even">Of the even sky, on the level.</param>
/// <param name="AroundSun">From around the sun, to be multiplied by the cosine of incidence.</param>
/// <param name="Horizon">Of the horizon band, to be multiplied by the sine of the tilt.</param>
/// <param name="Ground">Thrown up by the ground.</param>
internal readonly record struct SkyLight(double Beam, double Even, double AroundSun, double Horizon, double Ground)
{
    /// <summary>Parts the light of an hour.</summary>
    /// <param name="split">How the diffuse light is spread over the sky.</param>
    /// <param name="beamNormal">Beam normal to the sun [W/m²].</param>
    /// <param name="diffuse">Sky's light on the level [W/m²].</param>
    /// <param name="above">Normal to the sun above the atmosphere [W/m²].</param>
    /// <param name="mass">Relative air mass; Hay and Davies do not ask for it.</param>
    /// <param name="zenithDeg">Sun's zenith distance [°].</param>
    /// <param name="ground">Global light times the ground's reflectance [W/m²].</param>
    public static SkyLight Of(SkySplit split, double beamNormal, double diffuse, double above, double mass, double zenithDeg, double ground)
    {
        if (diffuse <= 0)
            return new(beamNormal, 0, 0, 0, ground);
        var sky = split == SkySplit.Perez ? SkyModel.Perez(diffuse, beamNormal, above, mass, zenithDeg) : new(beamNormal / above, 0);
        var around = diffuse * sky.AroundSun * SkyModel.SunRatio(1, zenithDeg);
        return new(beamNormal, diffuse * (1 - sky.AroundSun), around, diffuse * sky.Horizon, ground);
    }

    /// <summary>The same light with the sun behind the hills and a part of the even sky hidden by them.</summary>
    /// <param name="hidesSun">The sun stands behind the profile.</param>
    /// <param name="skyShare">What is left of the even sky [0…1].</param>
    public SkyLight Behind(bool hidesSun, double skyShare) =>
        this with { Beam = hidesSun ? 0 : Beam, AroundSun = hidesSun ? 0 : AroundSun, Even = Even * skyShare };

    /// <summary>What falls on a plane [W/m²]; sky light not below 0.</summary>
    /// <param name="cosIncidence">Cosine of the angle between sun and plane, −1 to 1.</param>
    /// <param name="up">How far the plane looks up: the cosine of its tilt.</param>
    public (double Beam, double Sky, double Ground) On(double cosIncidence, double up)
    {
        var facing = Math.Max(0, cosIncidence);
        var slope = Math.Sqrt(Math.Max(0, 1 - up * up));
        var sky = Even * (1 + up) / 2 + AroundSun * facing + Horizon * slope;
        return (Beam * facing, Math.Max(0, sky), Ground * (1 - up) / 2);
    }
}
