using System.Numerics;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.DayStore;
using DesignSearch.Season.House;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class EarthPipeTests
{
    private const string Film = "Gnielinski, smooth pipe, air at 15 °C, recomputed (frame of Bisoniya 2015, Geothermal Energy 3:18)";
    private const string Wave = "periodic wave outside a cylinder, lambda k K1(kr)/K0(kr), recomputed";

    private static EarthPipeNumbers Bare(double boreM) => new(boreM, boreM, 1, 1, 1);

    [Theory]
    [InlineData(0.10, 10, 15, 0.53, 3631, 3.12, 1.909, 0.852, 1.0, 5.1)]
    [InlineData(0.10, 6, 30, 1.06, 7263, 5.85, 1.074, 0.658, 2.5, 10.3)]
    [InlineData(0.10, 10, 50, 1.77, 12104, 8.86, 1.625, 0.803, 8.6, 17.1)]
    [InlineData(0.10, 20, 50, 1.77, 12104, 8.86, 3.251, 0.961, 14.3, 17.1)]
    [InlineData(0.10, 10, 100, 3.54, 24209, 15.20, 1.395, 0.752, 30.6, 34.2)]
    [InlineData(0.16, 11, 100, 1.38, 15130, 6.60, 1.065, 0.655, 4.0, 34.2)]
    [InlineData(0.20, 20, 900, 7.96, 108939, 24.42, 0.996, 0.631, 126.7, 308.1)]
    public void Table_of_pipes_is_met(double bore, double length, double flow, double speed, double reynolds, double film, double units,
        double share, double drop, double carried)
    {
        var (pipe, m3PerS) = (Bare(bore), flow / 3600);
        var id = FormattableString.Invariant($"day-store D1 {bore * 1000:000} mm {length:00} m {flow:000} m3/h ");
        void Row(string what, string unit, double expected, double ours, double digit, string runsIn) =>
            Validation.Equal(id + what, unit, expected, ours, Math.Max(0.005 * expected, digit / 2), Film, runsIn);
        Row("speed", "m/s", speed, EarthPipeAir.SpeedMPerS(bore, m3PerS), 0.01, "EarthPipeAir.SpeedMPerS");
        Row("Reynolds", "1", reynolds, EarthPipeAir.Reynolds(bore, m3PerS), 1, "EarthPipeAir.Reynolds");
        Row("film", "W/(m²K)", film, EarthPipeAir.FilmWPerM2K(bore, m3PerS), 0.01, "EarthPipeAir.FilmWPerM2K");
        Row("transfer units", "1", units, EarthPipeAir.TransferUnits(pipe, length, m3PerS), 0.001, "EarthPipeAir.TransferUnits");
        Row("effectiveness", "1", share, EarthPipeAir.Effectiveness(EarthPipeAir.TransferUnits(pipe, length, m3PerS)), 0.001,
            "EarthPipeAir.Effectiveness");
        Row("pressure", "Pa", drop, EarthPipeAir.DropPa(pipe, length, m3PerS), 0.1, "EarthPipeAir.DropPa");
        Row("flow times heat", "W/K", carried, EarthPipeAir.JPerM3K * m3PerS, 0.1, "EarthPipeAir.JPerM3K");
    }

    /// <summary>The exponential against a pipe walked along in small pieces, with a wall that has a resistance.</summary>
    [Fact]
    public void Ground_at_rest_gives_the_exponential()
    {
        var (pipe, flow, length) = (new EarthPipeNumbers(0.1036, 0.11, 0.17, 1, 1), 40.0 / 3600, 12.0);
        var (air, n) = (1.0, 200_000);
        var perPiece = EarthPipeAir.ToSoilWPerMK(pipe, flow) * length / n / (EarthPipeAir.JPerM3K * flow);
        for (var i = 0; i < n; i++)
            air -= perPiece * air;
        Validation.Equal("day-store D2 ground at rest", "share of the difference given up over 12 m", 1 - air,
            EarthPipeAir.Effectiveness(EarthPipeAir.TransferUnits(pipe, length, flow)),
            1e-5, "analytic, 1 - exp(-NTU), against 200 000 pieces", "EarthPipeAir.Effectiveness");
        Assert.True(EarthPipeAir.ToSoilWPerMK(pipe, flow) < EarthPipeAir.ToSoilWPerMK(Bare(0.1036), flow));
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(2.0)]
    [InlineData(7.0)]
    public void Laminar_film_and_friction_are_those_of_the_book(double flow)
    {
        var (bore, m3PerS) = (0.1, flow / 3600);
        var re = EarthPipeAir.Reynolds(bore, m3PerS);
        Assert.True(re < 2300);
        Assert.Equal(3.66 * 0.0253 / bore, EarthPipeAir.FilmWPerM2K(bore, m3PerS), 1e-12);
        Assert.Equal(64 / re, EarthPipeAir.Friction(re), 1e-12);
    }

    [Fact]
    public void Film_grows_with_the_flow_without_a_jump()
    {
        var last = 0.0;
        for (var flow = 1.0; flow < 40; flow += 0.05)
        {
            var film = EarthPipeAir.FilmWPerM2K(0.1, flow / 3600);
            Assert.InRange(film - last, 0, last == 0 ? 10 : 0.05);
            last = film;
        }
    }

    [Fact]
    public void Fan_runs_where_its_pressure_is_what_the_pipes_take()
    {
        var pipe = new EarthPipeNumbers(0.091, 0.1, 0.4, 3, 1.3);
        var flow = EarthPipeAir.FanFlowM3PerS(pipe, 10, 6, 110, 340.0 / 3600);
        Assert.InRange(flow, 0.3 * 340 / 3600, 340.0 / 3600);
        Assert.Equal(110 * (1 - Math.Pow(flow * 3600 / 340, 2)), EarthPipeAir.DropPa(pipe, 10, flow / 6), 1e-6);
        Assert.True(EarthPipeAir.FanFlowM3PerS(pipe, 20, 6, 110, 340.0 / 3600) < flow);
        Assert.True(EarthPipeAir.FanFlowM3PerS(pipe, 10, 12, 110, 340.0 / 3600) > flow);
    }

    [Theory]
    [InlineData(1.5, 2.5e6, 0.05, 27.1, 28, 234)]
    [InlineData(1.5, 2.5e6, 0.08, 23.3, 32, 322)]
    [InlineData(1.5, 2.5e6, 0.10, 22.0, 34, 379)]
    [InlineData(0.9, 2.27e6, 0.05, 0, 0, 161)]
    [InlineData(0.9, 2.27e6, 0.08, 0, 0, 225)]
    [InlineData(0.9, 2.27e6, 0.10, 0, 0, 267)]
    public void Soil_answers_a_single_pipe_as_the_cylinder_does(double conductivity, double capacity, double radius, double perM2,
        double degrees, double kiloJoule)
    {
        var soil = SoilRing.AdmittanceWPerMK(conductivity, capacity, radius, 100);
        var id = FormattableString.Invariant($"day-store D3 soil {conductivity} W/(m K) radius {radius:0.00} m ");
        if (perM2 > 0)
        {
            Validation.Equal(id + "admittance", "W/(m²K)", perM2, soil.Magnitude / (2 * Math.PI * radius), 0.005 * perM2, Wave, "SoilRing.AdmittanceWPerMK");
            Validation.Equal(id + "phase", "°", degrees, soil.Phase * 180 / Math.PI, 0.5, Wave, "SoilRing.AdmittanceWPerMK");
        }

        Validation.Equal(id + "heat", "kJ per metre, 1 K, half a day", kiloJoule, 2 * soil.Magnitude / SoilRing.DayPerS / 1000,
            0.005 * kiloJoule, Wave, "SoilRing.AdmittanceWPerMK");
    }

    /// <summary>Pipes that all but touch are a plane warmed from within; pipes far apart know nothing of each other.</summary>
    [Theory]
    [InlineData(0.03)]
    [InlineData(0.05)]
    public void Soil_is_shared_like_a_plane_when_pipes_are_close(double spacing)
    {
        var plane = 2 * spacing * Complex.Sqrt(new Complex(0, SoilRing.DayPerS * 2.5e6 / 1.5)) * 1.5;
        // As thin as leaves the row's own resistance out: ln(s/(2 pi r)) = 0.
        var soil = SoilRing.AdmittanceWPerMK(1.5, 2.5e6, spacing / (2 * Math.PI), spacing);
        Validation.Equal(FormattableString.Invariant($"day-store D4 row {spacing * 1000:00} mm apart"), "W/(m·K), both faces of a plane",
            plane.Magnitude, soil.Magnitude, 0.02 * plane.Magnitude, "periodic wave on a plane, 16.5 W/(m²K), recomputed", "SoilRing.AdmittanceWPerMK");
    }

    [Theory]
    [InlineData(0.35)]
    [InlineData(0.40)]
    public void Usual_spacings_use_the_soil_fully_and_closer_ones_share_it(double spacing)
    {
        var alone = SoilRing.AdmittanceWPerMK(1.5, 2.5e6, 0.05, 100).Magnitude;
        Assert.InRange(SoilRing.AdmittanceWPerMK(1.5, 2.5e6, 0.05, spacing).Magnitude / alone, 0.97, 1.10);
        Assert.True(SoilRing.AdmittanceWPerMK(1.5, 2.5e6, 0.05, 0.15).Magnitude < 0.75 * alone);
    }

    /// <summary>
    /// The kernel's ring with the layers behind it, over the soils, pipes, spacings and depths that the catalogue can make.
    /// </summary>
    [Fact]
    public void Ring_and_layers_answer_the_day_as_strongly_as_the_soil()
    {
        var (amount, phase, worstDays) = (0.0, 0.0, 0.0);
        foreach (var (conductivity, capacity) in new[] { (0.5, 1.5e6), (0.9, 2.27e6), (1.2, 2.0e6), (1.5, 2.5e6), (2.1, 2.12e6) })
        {
            var assumptions = SeasonAssumptions.Default.With(HouseAssumptions.SoilConductivityWPerMK, conductivity)
                .With(HouseAssumptions.SoilVolumetricCapacityJPerM3K, capacity);
            foreach (var radius in new[] { 0.05, 0.055, 0.08 })
            {
                foreach (var spacing in new[] { 0.25, 0.35, 0.5, 1.0 })
                {
                    foreach (var depth in new[] { 0.4, 0.5, 0.6, 0.8 })
                    {
                        var soil = SoilRing.AdmittanceWPerMK(conductivity, capacity, radius, spacing);
                        var layers = DayStoreNumbers.LayersMKPerJ(depth, spacing, assumptions);
                        var ring = SoilRing.Of(soil, layers);
                        var ours = Answer(ring, layers);
                        amount = Math.Max(amount, Math.Abs(ours.Magnitude / soil.Magnitude - 1));
                        phase = Math.Max(phase, Math.Abs(ours.Phase - soil.Phase) * 180 / Math.PI);
                        var slow = SoilRing.DayPerS / 3;
                        var three = SoilRing.AdmittanceWPerMK(conductivity, capacity, radius, spacing, slow).Magnitude;
                        worstDays = Math.Max(worstDays, Math.Abs(Answer(ring, layers, slow).Magnitude / three - 1));
                    }
                }
            }
        }

        Validation.Within("day-store D5 ring over the day", "largest error of its amount", 0, 0.005, amount, Wave, "SoilRing.Of");
        Validation.Within("day-store D5 ring phase", "largest error of its phase over the day [°]", 0, 25, phase, Wave, "SoilRing.Of");
        Validation.Within("day-store D5 ring over three days", "largest error of its amount", 0, 0.40, worstDays, Wave, "SoilRing.Of");
    }

    /// <summary>The measured plant of Kutch: eight pipes, and the heat that five kelvin bring.</summary>
    [Fact]
    public void Pipes_of_a_measured_plant_give_what_its_flow_can()
    {
        const string Source = "Sharan et al., IIM Ahmedabad: 8 steel pipes 0.20 m x 20 m, 7200 m3/h, 7.5 hp blower for 120 m²";
        var (pipe, flow) = (new EarthPipeNumbers(0.2, 0.206, 50, 1, 1), 7200.0 / 3600);
        var share = EarthPipeAir.Effectiveness(EarthPipeAir.TransferUnits(pipe, 20, flow / 8));
        var heat = EarthPipeAir.JPerM3K * flow * share * 5;
        Validation.Within("day-store D6 Kutch effectiveness", "1", 0.60, 0.66, share, Source + ", recomputed 0.63", "EarthPipeAir.Effectiveness");
        Validation.Within("day-store D6 Kutch heat", "kW for 5 K between air and wall", 7.4, 8.2, heat / 1000, Source + ", recomputed 7.8", "EarthPipeAir.JPerM3K");
        Validation.Within("day-store D6 Kutch fan", "heat over electricity of the blower", 1.2, 1.6, heat / (7.5 * 745.7),
            Source + ", recomputed 1.4", "EarthPipeAir.JPerM3K");
    }

    // What ring and layers together answer to a wave at the pipe's face [W/(m·K)].
    private static Complex Answer(SoilRing ring, double layersMKPerJ, double frequency = SoilRing.DayPerS) =>
        new Complex(0, frequency * ring.StoreJPerMK) + 1 / (1 / ring.ToSoilWPerMK + layersMKPerJ / new Complex(0, frequency));
}
