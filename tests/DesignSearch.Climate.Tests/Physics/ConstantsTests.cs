using DesignSearch.Physics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public class ConstantsTests
{
    [Fact]
    public void Stefan_Boltzmann_follows_from_the_exact_constants_of_the_SI()
    {
        const double Boltzmann = 1.380649e-23, Planck = 6.62607015e-34, Light = 299_792_458;
        var sigma = 2 * Math.Pow(Math.PI, 5) * Math.Pow(Boltzmann, 4) / (15 * Math.Pow(Planck, 3) * Light * Light);
        Validation.Equal("constants Stefan-Boltzmann", "W/(m²K⁴)", sigma, Radiation.StefanBoltzmannWPerM2K4, 1e-17, "analytic, from k, h and c of the SI Brochure, 9th edition 2019", "Radiation.StefanBoltzmannWPerM2K4");
    }

    [Fact]
    public void The_sun_above_the_atmosphere_is_as_measured() =>
        Validation.Within("constants sun at one astronomical unit", "W/m²", 1360.3, 1361.3, Radiation.SolarConstantWPerM2, "G. Kopp and J. L. Lean 2011, Geophysical Research Letters 38, L01706 (from memory)", "Radiation.SolarConstantWPerM2");

    [Fact]
    public void Water_holds_the_mean_heat_of_ten_to_eighty_degrees()
    {
        // 10, 20 … 80 °C at 101.325 kPa [kJ/(kg·K)].
        double[] table = [4.1954, 4.1848, 4.1800, 4.1786, 4.1796, 4.1828, 4.1881, 4.1955];
        Validation.Equal("constants water's specific heat", "J/(kg K)", 1000 * table.Average(), Water.HeatJPerKgK, 0.5, "IAPWS-IF97, mean of 10 to 80 °C", "Water.HeatJPerKgK");
    }
}
