namespace DesignSearch.Physics;

/// <summary>Heat that is radiated, and the sun.</summary>
public static class Radiation
{
    /// <summary>Stefan-Boltzmann constant σ [W/(m²K⁴)]: 5.670374419e-8 (CODATA 2018; exact since 2019 but for the digits cut off).</summary>
    public const double StefanBoltzmannWPerM2K4 = 5.670374419e-8;

    /// <summary>
    /// Irradiance normal to the sun above the atmosphere at one astronomical unit [W/m²]: 1361
    /// (G. Kopp and J. L. Lean, Geophysical Research Letters 38, 2011, L01706: 1360.8 ± 0.5).
    /// </summary>
    public const double SolarConstantWPerM2 = 1361;
}
