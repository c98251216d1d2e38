using DesignSearch.Climate;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.Covers;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>
/// Houses that were measured, set up as far as their reports name them. What they leave out is our usual house (2.2 m high, half an air change, light 0.75);
/// monthly means of their places are rounded from memory. Bands: 1 K on the mean lift of the daily minimum, 30 % on ratios, else order.
/// Not set up, and why. Wien 2009 (edge of a tunnel 2 K colder): one node has no edge; the figure stands in docs/model.md as what the model leaves out.
/// Growers' logs of British polytunnels in spring and Wang and Liang 2006: soil against the soil of open ground or of a twin, which the model does not carry.
/// Oregon field covers 1983-88 and Gu 2017: a row cover over the crop is not a part of the model. Kurklu et al. 2003 (rock canals) and the soil-air loops of
/// Acta Hort. 154: stores under the floor with a fan are not in it. Grafiadellis and Kyritsis 1981, Acta Hort. 154: collector and tank sizes are not named.
/// Boulard et al. 1990: latent store. Neugebauer et al. 2021: a heap inside the house without a coil; ours stands outside and has one.
/// Clemson thesis 2016: pipes in the soil. Feuilloley and Issanchou 1996, film wet or dry: emissivity of a wet film is an entry, not a state;
/// Geoola et al. 2009, of the same kind, give signs for wind and warmth, which are tried, and a saving of a screen that is not named, which is not.
/// </summary>
public sealed class MeasuredHouseTests(Xunit.Abstractions.ITestOutputHelper output)
{
    private static readonly SeasonDates North = new(12, 1, 2, 28);

    // Monthly means from memory, January first: mean, mean daily low, kWh/(m² d), m/s, %.
    private static readonly Winter Hangzhou = Made("Hangzhou", 30.3, 120.2, 40, North, [(4.5, 1.5, 2.2), (6, 3, 2.6), (10, 6.5, 3.1), (16, 12, 4), (21, 17, 4.5), (25, 21.5, 4.4), (29, 25.5, 5.3), (28, 25, 4.9), (24, 20.5, 3.9), (18.5, 14.5, 3.3), (12.5, 8.5, 2.6), (6.5, 3, 2.3)], 2.2, 74);
    private static readonly Winter Natal = Made("Natal midlands", -29.6, 30.4, 700, new(6, 1, 8, 31), [(22, 17, 5.7), (22, 17, 5.4), (21, 16, 4.9), (18, 12.5, 4.3), (15, 7.5, 3.8), (12, 3.5, 3.4), (12, 3.5, 3.7), (14, 6, 4.2), (16.5, 9.5, 4.7), (18, 12, 5), (19.5, 14, 5.3), (21, 15.5, 5.8)], 1.8, 66);
    private static readonly Winter LasCruces = Made("Las Cruces", 32.3, -106.8, 1200, North, [(6, -2.5, 3.3), (8.5, -0.5, 4.3), (12.5, 2.5, 5.6), (17, 6.5, 6.9), (21.5, 11, 7.6), (26.5, 16, 7.8), (27.5, 19.5, 7), (26.5, 18.5, 6.3), (23.5, 14.5, 5.6), (17.5, 7.5, 4.7), (10.5, 0.5, 3.6), (6, -2.5, 3)], 2.8, 45);
    private static readonly Winter Naples = Made("Campania", 40.9, 14.3, 60, North, [(9, 5, 1.9), (9.5, 5, 2.7), (12, 7, 3.9), (15, 9.5, 5.1), (19, 13.5, 6.3), (23, 17, 7), (26, 19.5, 7.1), (26, 19.5, 6.2), (22.5, 17, 4.7), (18, 13, 3.3), (13.5, 9, 2.1), (10, 6.5, 1.6)], 2.8, 72);
    private static readonly Winter Columbia = Made("Columbia, Missouri", 38.9, -92.3, 240, North, [(-1.5, -6.5, 2.1), (1, -4.5, 2.9), (6.5, 1, 3.9), (13, 7, 5), (18, 12.5, 5.8), (23, 17.5, 6.5), (25.5, 20, 6.6), (24.5, 19, 5.9), (20, 14, 4.7), (13.5, 8, 3.5), (7, 2, 2.3), (0.5, -4, 1.8)], 4, 72);
    private static readonly Winter Winnipeg = Made("Winnipeg", 49.8, -97.2, 240, new(1, 5, 2, 15), [(-17, -22, 1.4), (-14, -19, 2.5), (-6, -11.5, 4), (4, -2, 5.2), (11.5, 5, 6), (17, 10.5, 6.4), (19.5, 13.5, 6.5), (18.5, 12, 5.4), (12.5, 6.5, 3.7), (5, 0, 2.3), (-5, -9.5, 1.4), (-14, -18.5, 1.1)], 4.5, 76);
    private static readonly Winter Leeds = Made("West Yorkshire", 53.7, -1.8, 150, new(3, 1, 3, 31), [(3.5, 1, 0.6), (3.5, 0.8, 1.2), (5.5, 2.3, 2.2), (8, 4, 3.5), (11, 6.5, 4.6), (14, 9.5, 4.9), (16, 11.5, 4.7), (15.5, 11.3, 4), (13.3, 9.5, 2.9), (10, 6.8, 1.6), (6.3, 3.5, 0.8), (4, 1.5, 0.5)], 5, 82);

    private static readonly MeasuredHouse Tunnel = new() { LengthM = 15, WidthM = 5, U = 6.5, Light = 0.8 };

    [Fact]
    public void Single_film_tunnel_in_South_Africa()
    {
        const string source = "Savage 1980, Agrochemophysica 12:5-13; house size and climate assumed";
        // By the report the film is opaque with dew soon after sunset.
        var rows = (Tunnel with { MakeUp = CoverMakeUp.Of([new(0.0003, 0, 0.95)], 0.05, 45) }).Hours(Natal);
        Validation.Within("measured A1 single film, mean lift of the daily minimum", "K", 0.3, 2.3, MeasuredHouse.Lift(rows), source, "SeasonSimulator.Run");
    }

    [Fact]
    public void Single_and_double_cover_in_Hangzhou()
    {
        const string source = "Chinese journal 2014, standard plastic houses 2010-12; house size and climate assumed";
        var house = new MeasuredHouse { LengthM = 30, WidthM = 8, HeightM = 3, U = 6.5, Light = 0.75 };
        var single = MeasuredHouse.Lift(house.Hours(Hangzhou));
        var two = MeasuredHouse.Lift(new MeasuredHouse { LengthM = 30, WidthM = 8, HeightM = 3, U = 4, Layers = 2, Light = 0.65 }.Hours(Hangzhou));
        // A real night's sky is mostly clear or covered, and the coldest hour falls into the clear: the lift by an even sky was 1.07 K.
        Validation.Within("measured A2 single cover, mean lift of the daily minimum", "K", 1, 3, single, source, "SeasonSimulator.Run");
        Validation.Within("measured A2 double cover, mean lift of the daily minimum", "K", 2, 4, two, source, "SeasonSimulator.Run");
        Validation.Within("measured A2 lift of double over single cover", "ratio", 1.2, 1.8, two / single, source, "SeasonSimulator.Run");
    }

    [Fact]
    public void Single_double_and_barrels_in_New_Mexico()
    {
        const string source = "SARE SW09-041; Uchanski et al. 2020, HortTechnology 30(2):259-267: order SL, DL, DL+B";
        MeasuredHouse House(double u, int layers, BarrelNumbers barrels) => new() { LengthM = 9.8, WidthM = 4.9, U = u, Layers = layers, Light = 0.8 - 0.08 * (layers - 1), Barrels = barrels };
        // 16 drums of 208 L: 1.9 m² of side and top each.
        var rows = new[] { House(6.5, 1, BarrelNumbers.None), House(4, 2, BarrelNumbers.None), House(4, 2, new BarrelNumbers(16 * 208, 16 * 1.9, 0.3)) }.Select(h => h.Hours(LasCruces)).ToArray();
        var air = Array.ConvertAll(rows, r => MeasuredHouse.Daily(r, x => x.AirMeanC, d => d.Min()).Average());
        var soil = Array.ConvertAll(rows, r => MeasuredHouse.Daily(r, x => x.FloorC, d => d.Min()).Average());
        var noon = Array.ConvertAll(rows, r => MeasuredHouse.Daily(r, x => x.AirMeanC, d => d.Max()).Average());
        Validation.Within("measured A3 air minimum, double less single", "K", 0, 5, air[1] - air[0], source, "SeasonSimulator.Run");
        Validation.Within("measured A3 air minimum, barrels less none", "K", 0.01, 10, air[2] - air[1], source, "SeasonSimulator.Run");
        Validation.Within("measured A3 soil minimum, double less single", "K", 0, 5, soil[1] - soil[0], source, "SeasonSimulator.Run");
        Validation.Within("measured A3 soil minimum, barrels less none", "K", 0.01, 10, soil[2] - soil[1], source, "SeasonSimulator.Run");
        Validation.Within("measured A3 day maximum, barrels less none", "K", -20, -0.01, noon[2] - noon[1], source, "SeasonSimulator.Run");
    }

    [Fact]
    public void Low_tunnel_lifts_less_under_a_clear_sky()
    {
        const string source = "Sugiyama, Takahashi and Lee 1967, J. Jap. Soc. Hort. Sci. 36:186-194; order";
        var rows = new MeasuredHouse { LengthM = 6, WidthM = 1.1, HeightM = 0.5, U = 6.5 }.Hours(Hangzhou);
        var nights = rows.Where(r => r.CollectorSunWPerM2 == 0 && r.HouseSunW == 0).GroupBy(r => r.LocalTime.AddHours(-12).Date)
            .Select(n => (Sky: n.Average(r => r.OutsideC - r.SkyC), Lift: n.Min(r => r.AirMeanC) - n.Min(r => r.OutsideC))).OrderBy(n => n.Sky).ToArray();
        var third = nights.Length / 3;
        Validation.Within("measured A4 low tunnel, lift in cloudy less clear nights", "K", 0.01, 5, nights[..third].Average(n => n.Lift) - nights[^third..].Average(n => n.Lift), source, "SeasonSimulator.Run");
        Validation.Within("measured A4 low tunnel, lift in cloudy nights", "K", 0.01, 5, nights[..third].Average(n => n.Lift), source, "SeasonSimulator.Run");
    }

    [Fact]
    public void Insulated_lean_to_with_barrels_in_Missouri()
    {
        // 7.3 x 3.7 x 3.7 m, two films, 100 L of water per m² of glazing as a rule for season extension; wall and ends of 90 mm wool.
        var house = new MeasuredHouse { LengthM = 7.3, WidthM = 3.7, HeightM = 3.7, U = 3.2, Layers = 2, Light = 0.7, Wall = new WallNumbers(41, 0.05, 2.3, 2e4, 0.1), SolidEnds = true, Barrels = new BarrelNumbers(3800, 35, 0.35) };
        Validation.Within("measured A6 insulated lean-to with barrels, lowest air of a typical winter", "°C", 0, 10, house.Run(Columbia).LowestAirC, "Lawman, Univ. Missouri Extension 2008, a claim: never below 0 °C; insulation assumed", "SeasonSimulator.Run");
    }

    [Fact]
    public void Leaky_garden_glasshouse_in_Yorkshire() => Validation.Within("measured A7 leaky glasshouse in March, mean lift of the daily minimum", "K", 0, 1.5, MeasuredHouse.Lift(new MeasuredHouse { LengthM = 3, WidthM = 2.4, U = 5.8, Light = 0.8, Leak = 2, LeakPerWind = 1.5 }.Hours(Leeds)), "grower's log 2015, a claim: usually within 1 K; 0.5 K allowed", "SeasonSimulator.Run");

    [Fact]
    public void Ordinary_and_heavy_walled_house_in_Winnipeg()
    {
        const string source = "Zhang, Univ. Manitoba, press report, a claim: -11 and +9 °C at -16 °C; sizes assumed";
        double Lift(MeasuredHouse house) => house.Hours(Winnipeg).Where(r => r.HouseSunW == 0 && Math.Abs(r.OutsideC + 16) < 3).Average(r => r.AirMeanC - r.OutsideC);
        var ordinary = Lift(new MeasuredHouse { LengthM = 20, WidthM = 7, HeightM = 3, U = 6, Leak = 0.7 });
        var heavy = Lift(new MeasuredHouse { LengthM = 20, WidthM = 7, HeightM = 3.3, U = 3.3, Layers = 2, Light = 0.7, Leak = 0.2, LeakPerWind = 0.03, NightResistance = 1.2, Wall = new WallNumbers(66, 0.1, 4, 6e5, 0.35) });
        Validation.Missed("measured A8 ordinary house at -16 °C, lift at night", "K", 3, 6, ordinary, source, "SeasonSimulator.Run");
        Validation.Within("measured A8 heavy wall and night blanket at -16 °C, lift at night", "K", 15, 25, heavy, source, "SeasonSimulator.Run");
    }

    [Fact]
    public void Cloth_drawn_from_dusk_to_dawn_in_Campania()
    {
        var open = new MeasuredHouse { LengthM = 12, WidthM = 8, HeightM = 3, U = 5.8, Light = 0.8 };
        var drawn = new MeasuredHouse { LengthM = 12, WidthM = 8, HeightM = 3, U = 5.8, Light = 0.8, NightResistance = 0.12 };
        Validation.Within("measured B3 cloth at night, rise of the mean minimum", "K", 0.4, 2, MeasuredHouse.Lift(drawn.Hours(Naples)) - MeasuredHouse.Lift(open.Hours(Naples)), "Duranti et al. 1989, Acta Hort. 229(23), from memory; no heating presumed, house size assumed", "SeasonSimulator.Run");
    }

    [Theory]
    [InlineData("plain film", 0.1, 25, 45, "Acta Hort. 51:19-28")]
    [InlineData("tight aluminised cloth", 0.28, 50, 65, "Acta Hort. 245(15), provisional")]
    public void Screens_save_heat_while_they_are_closed(string name, double resistance, double low, double high, string source)
    {
        double Heat(double night)
        {
            var house = new MeasuredHouse { LengthM = 20, WidthM = 8, HeightM = 3, U = 5.8, Light = 0.8, NightResistance = night, Heater = new HeaterNumbers(1e6, 15, 1) };
            return house.Hours(Naples).Where(r => r.LocalTime.Hour is >= 20 or < 6).Sum(r => r.HeaterW);
        }

        Validation.Within($"measured B4 {name}, heat saved in closed hours", "%", low, high, 100 * (1 - Heat(resistance) / Heat(0)), source + "; resistance assumed", "SeasonSimulator.Run");
    }

    [Fact]
    public void Heat_loss_grows_with_the_wind_less_so_behind_a_curtain()
    {
        const string source = "Mihara and Hayashi 1979, J. Agr. Met. 35(1):13-19: 5.13 + 0.47 w glass, 3.41 + 0.12 w with a curtain, W/(m²K)";
        double PerM2K(double wind, double night, double? houseU = null)
        {
            var house = new MeasuredHouse { LengthM = 3, WidthM = 2, HeightM = 2, U = 5.8, HouseU = houseU, NightResistance = night, Heater = new HeaterNumbers(1e5, 15, 1) };
            // Wind at the house itself: the model takes 0.6 of the weather mast's.
            var winter = MadeWinter.Of(6, 3, meanC: 0, swingK: 0, noonWPerM2: 0, windMPerS: wind / 0.6, skyBelowK: 10);
            var rows = house.Hours(winter);
            return rows.Where(r => r.LocalTime.Hour is >= 20 or < 6).Average(r => r.HeaterW / (r.AirMeanC - r.OutsideC)) / house.CoverM2;
        }

        double Slope(double night) => 100 * (PerM2K(4, night) - PerM2K(1, night)) / 3 / PerM2K(1, night);
        double Saved(double wind) => 100 * (1 - PerM2K(wind, 0.15) / PerM2K(wind, 0));
        output.WriteLine(FormattableString.Invariant($"{PerM2K(1, 0)} {PerM2K(4, 0)} curtain {PerM2K(1, 0.15)} {PerM2K(4, 0.15)}; slopes {Slope(0)} {Slope(0.15)}; saved {Saved(1)} {Saved(4)}"));
        Validation.Missed("measured B5 loss of single glass at 1 m/s", "W/(m²K) of cover", 4.2, 7, PerM2K(1, 0), source, "SeasonSimulator.Run");
        // Stated as practice states it, joints and stirred air in it, which is what a builder types for glass.
        Validation.Within("measured B5 loss of single glass at 1 m/s, stated as 6 W/(m²K) of a house", "W/(m²K) of cover", 4.2, 7, PerM2K(1, 0, 6), source, "HouseUValue.Met");
        Validation.Missed("measured B5 wind slope, single glass", "% per m/s", 8, 12, Slope(0), source, "SeasonSimulator.Run");
        Validation.Missed("measured B5 wind slope, curtain", "% per m/s", 3, 6, Slope(0.15), source, "SeasonSimulator.Run");
        Validation.Within("measured B5 saving of the curtain at 4 less at 1 m/s", "points", 0.01, 20, Saved(4) - Saved(1), source, "SeasonSimulator.Run");
    }

    [Fact]
    public void A_film_box_loses_more_per_kelvin_in_wind_and_when_it_is_warmer()
    {
        const string source = "Geoola et al. 2009, Polymer Testing 28:470-474, signs; box of one film without leaks, size assumed";
        double PerM2K(double wind, double setC)
        {
            var box = new MeasuredHouse { LengthM = 1, WidthM = 1, HeightM = 1, U = 6.5, Leak = 0, LeakPerWind = 0, Heater = new HeaterNumbers(1e5, setC, 1) };
            var rows = box.Hours(MadeWinter.Of(6, 3, meanC: 0, swingK: 0, noonWPerM2: 0, windMPerS: wind / 0.6, skyBelowK: 0));
            return rows.Average(r => r.HeaterW / (r.AirMeanC - r.OutsideC)) / box.CoverM2;
        }

        Validation.Within("measured B6 film box at 4 m/s over that at 0.5 m/s", "loss per kelvin, ratio", 1.02, 2, PerM2K(4, 20) / PerM2K(0.5, 20), source, "SeasonSimulator.Run");
        Validation.Within("measured B6 film box 30 K warmer than outside over one 10 K warmer", "loss per kelvin, ratio", 1.001, 1.5, PerM2K(0.5, 30) / PerM2K(0.5, 10), source, "SeasonSimulator.Run");
    }

    [Fact]
    public void Water_sleeves_give_what_barrels_give() => Validation.Within("measured C1 release of water stores", "W/(m²K)", 4.5, 10, SeasonAssumptions.Default.BarrelFilmWPerM2K, "Verlodt and Mougou 1990, Acta Hort. 263(13): 6 to 8, 25 % allowed", "SeasonAssumptions.BarrelFilmWPerM2K");

    [Fact]
    public void Bare_soil_gives_8_to_20_watts_at_night()
    {
        var winter = Made("snowy northern Japan", 38, 140, 20, North, [(0, -3, 1.7), (0.5, -3, 2.4), (4, -0.5, 3.5), (10, 5, 4.6), (15.5, 11, 5.2), (20, 16, 5), (23.5, 20, 4.7), (25, 21, 4.8), (21, 17, 3.5), (14.5, 10, 2.7), (8.5, 4.5, 1.8), (3, -0.5, 1.4)], 3, 76);
        var house = new MeasuredHouse { LengthM = 20, WidthM = 6, U = 6.5 };
        Validation.Missed("measured C9 soil heat at night, bare floor", "W/m² upward at 5 cm, mean of 18 to 6 h", 8, 20, house.NightSoilFlux(winter), "J. Soc. Agr. Struct. Japan 42(2):59: up to about 20; climate and size assumed", "SeasonSimulator.Run");
    }

    [Fact]
    public void A_plane_turned_45_degrees_gains_in_the_afternoon_and_not_at_noon()
    {
        const string source = "Int. J. Photoenergy 2015:321843, order; amateur reading, a claim: +44 % at 15 h";
        var planes = new PlaneCache(10_000_000);
        // Clear hours of a winter at 39° north.
        double Light(double azimuth, int hour)
        {
            var p = planes.Get(Columbia, Mount.FixedAt(60, azimuth));
            return Enumerable.Range(0, Columbia.Hours).Where(h => h % 24 == hour && Columbia.BeamNormalWPerM2[h] > 500).Sum(h => p.BeamWPerM2[h] + p.SkyWPerM2[h] + p.GroundWPerM2[h]);
        }

        Validation.Within("measured C10 plane turned by 45° at 15 h", "gain, %", 30, 50, 100 * (Light(225, 15) / Light(180, 15) - 1), source, "PlaneModel.For");
        Validation.Within("measured C10 plane turned by 22.5° near noon", "gain, %", -10, 10, 100 * (Light(202.5, 12) / Light(180, 12) - 1), source, "PlaneModel.For");
    }

    private static Winter Made(string name, double latitude, double longitude, double elevation, SeasonDates season, (double Mean, double Low, double Sun)[] months, double wind, double humidity) => WinterMaker.Synthetic(
        new MonthlyClimate(new Place(name, latitude, longitude, elevation, Math.Round(longitude / 15)), [.. months.Select(m => new MonthMeans(m.Mean, m.Low, m.Sun, wind, humidity))]),
        season,
        WinterKind.Typical,
        1,
        new WinterOptions());
}
