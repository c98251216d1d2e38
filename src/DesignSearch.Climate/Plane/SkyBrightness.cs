namespace DesignSearch.Climate.Plane;

/// <summary>Shape of the sky's light after Perez et al. (1990).</summary>
/// <param name="AroundSun">Share of the diffuse light from around the sun, 0 or more.</param>
/// <param name="Horizon">Brightening of the horizon as a share of the diffuse light; negative when it darkens.</param>
public readonly record struct SkyBrightness(double AroundSun, double Horizon);
