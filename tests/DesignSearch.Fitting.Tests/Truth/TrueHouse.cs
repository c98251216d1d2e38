using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.InnerStores;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Fitting.Tests.Truth;

/// <summary>A house whose every figure is drawn away from the model's usual ones, in a winter of its own: what it loses is known here and nowhere else.</summary>
internal sealed class TrueHouse
{
    private readonly Random random;
    private readonly Installation plant;
    private readonly SeasonAssumptions assumptions;
    private readonly double skyK;
    private WinterForcing weather = null!;
    private Func<Func<HouseNumbers, HouseNumbers>, MadeLog> again = null!;

    public TrueHouse(Scenario scenario, int seed)
    {
        (Scenario, random) = (scenario, new(seed));
        var drawn = LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices)).Installation;
        var house = drawn.House;
        var (cover, leaks, edge) = (Log(0.75, 1.5), Log(0.5, 2.2), Log(0.6, 1.5));
        plant = (drawn with
        {
            House = house with
            {
                CoverAreaM2 = cover * house.CoverAreaM2,
                AirChangesPerHour = leaks * house.AirChangesPerHour,
                AirChangesPerHourPerMPerS = leaks * house.AirChangesPerHourPerMPerS,
                EdgeLossWPerMK = edge * house.EdgeLossWPerMK,
                LiningTransmittance = Log(0.75, 1.25),
            },
        }).With(new InnerStoreNumbers(Log(10_000, 90_000) * house.FloorAreaM2, Log(3, 12) * house.FloorAreaM2));
        assumptions = scenario.Assumptions
            .With(HouseAssumptions.SoilConductivityWPerMK, Log(0.6, 2))
            .With(HouseAssumptions.FloorFilmUpWPerM2K, Log(2.5, 6))
            .With(HouseAssumptions.FloorFilmDownWPerM2K, Log(0.5, 2))
            .With(HouseAssumptions.InsideConvectionWPerM2K43, Log(1.1, 1.9))
            .With(HouseAssumptions.BenchAreaRatio, Between(0.1, 1.2))
            .With(HouseAssumptions.CondensationWPerM2K, Between(0, 2))
            .With(HouseAssumptions.RoofWindFactor, Between(0.4, 0.8))
            .With(HouseAssumptions.SunFloorShare, Between(0.4, 0.8))
            .With(HouseAssumptions.AirAndLeafCapacityJPerM2K, Log(8_000, 25_000));
        skyK = Between(-4, 4);
        Draws = FormattableString.Invariant($"{cover:0.00} {leaks:0.00} {edge:0.00} {assumptions.SoilConductivityWPerMK:0.00} {assumptions[HouseAssumptions.FloorFilmDownWPerM2K]:0.00} {assumptions[HouseAssumptions.InsideConvectionWPerM2K43]:0.00} {assumptions[HouseAssumptions.BenchAreaRatio]:0.00} {assumptions.CondensationWPerM2K:0.00} {assumptions.RoofWindFactor:0.00} {skyK:0.0} {plant.Find<InnerStoreNumbers>()!.CapacityJPerK / house.FloorAreaM2:0} {plant.Find<InnerStoreNumbers>()!.CouplingWPerK / house.FloorAreaM2:0.0}");
    }

    public Scenario Scenario { get; }

    /// <summary>What was drawn, for a person who looks for a pattern.</summary>
    public string Draws { get; }

    /// <summary>What it needs to be held at 8 °C through a standard night, over what the drawing needs: the loss that a fit seeks.</summary>
    public double Loss { get; private set; }

    public Installation Plant => plant;

    public double Between(double low, double high) => low + (high - low) * random.NextDouble();

    private double Log(double low, double high) => low * Math.Pow(high / low, random.NextDouble());

    public double Noise(double sd) => sd * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>A log of some days of its own winter.</summary>
    /// <param name="days">Days.</param>
    /// <param name="setC">What the heater holds in a night, by its number; NaN where it rests.</param>
    /// <param name="firstDay">Day of the season; below 0 for the coldest.</param>
    public MadeLog Log(int days, Func<int, double> setC, int firstDay = -1)
    {
        var own = Scenario with { Assumptions = assumptions };
        var winter = DesignWinters.Drawn(own, 1, (ulong)random.Next(1, 1_000_000))[0];
        winter = winter with { SkyC = [.. winter.SkyC.Select(s => s - skyK)] };
        var forcing = WinterSet.Of(own, [(winter, 1.0)]).Winters[0].Forcing;
        var first = (winter.WarmUpHours / 24 + (firstDay < 0 ? Coldest(winter, days) : firstDay)) * 24;
        var watts = 15 * HouseLoss.CoefficientWPerK(plant.House, 2);
        var held = new double[winter.Hours];
        Array.Fill(held, double.NaN);
        for (var day = 0; day < days; day++)
        {
            for (var h = 17; h < 31; h++)
                held[first + 24 * day + h] = setC(day);
        }

        weather = forcing;
        again = house => Written(plant with { House = house(plant.House) }, watts, held, first, days);
        Loss = Slope(plant, forcing) / Slope(LayoutBuilder.Build(Scenario, Layout.Bare(Scenario.Systems.Choices)).Installation, DrawnWeather);
        return again(h => h);
    }

    /// <summary>The last log again, of a house that was changed: same weather, same hand on the thermostat.</summary>
    public MadeLog Again(Func<HouseNumbers, HouseNumbers> change) => again(change);

    private MadeLog Written(Installation house, double watts, double[] held, int first, int days)
    {
        var winter = weather.Winter;
        var (air, heat) = (new List<double>(), new List<double>());
        SeasonSimulator.Run(weather, new LayoutCase(house.With(new HandSet(watts, held, air, heat)), null));
        const int perHour = 60 / MadeLog.StepMinutes;
        var kept = Enumerable.Range(first * perHour, (24 * days + 8) * perHour).ToArray();
        // Outside runs straight from the middle of one hour to that of the next, as a logger of instants sees it.
        double Outside(int step)
        {
            var hour = (step + 0.5) / perHour - 0.5;
            var at = Math.Clamp((int)hour, 0, winter.Hours - 2);
            return winter.AirC[at] + (winter.AirC[at + 1] - winter.AirC[at]) * (hour - at);
        }

        return new(
            winter.Start.AddHours(first), [.. kept.Select(i => air[i] + Noise(NoiseK))], [.. kept.Select(i => Outside(i) + Noise(NoiseK))], [.. kept.Select(i => heat[i])]);
    }

    private const double NoiseK = 0.3;

    // As cold as the forecast allows: the coldest of the days from the fourth week on.
    private static int Coldest(Winter winter, int days) => Enumerable.Range(21, 95)
        .MinBy(d => winter.AirC.AsSpan(winter.WarmUpHours + 24 * d + 17, 24 * days - 10).ToArray().Average());

    /// <summary>The winter that was last logged, as a model sees it that knows sky and wind, but none of the figures drawn.</summary>
    public WinterForcing DrawnWeather => WinterSet.Of(Scenario, [(weather.Winter with { SkyC = [.. weather.Winter.SkyC.Select(s => s + skyK)] }, 1.0)]).Winters[0].Forcing;

    /// <summary>What more the nights of that winter take for each kelvin that the house is held warmer [W/K].</summary>
    public double SlopeWPerK => Slope(plant, weather);

    /// <summary>Heat that holds the house at 8 °C through the nights of that winter [kWh].</summary>
    public double HeldKwh => Held(plant, weather, 8);

    /// <summary>What more a plant takes in the nights of a winter for each kelvin that it is held warmer, between 6 and 10 °C [W/K].</summary>
    public static double Slope(Installation plant, WinterForcing forcing) => Slope(plant, forcing, forcing.Winter.WarmUpHours, forcing.Winter.SeasonHours);

    /// <summary>The same in the nights of some hours.</summary>
    public static double Slope(Installation plant, WinterForcing forcing, int first, int hours) =>
        1000 * (Held(plant, forcing, 10, first, hours) - Held(plant, forcing, 6, first, hours)) / 4
        / Enumerable.Range(first, hours).Count(h => forcing.Winter.GlobalWPerM2[h] <= 0);

    /// <summary>Heat that holds a plant at a temperature through a winter's nights [kWh].</summary>
    public static double Held(Installation plant, WinterForcing forcing, double setC) =>
        Held(plant, forcing, setC, forcing.Winter.WarmUpHours, forcing.Winter.SeasonHours);

    private static double Held(Installation plant, WinterForcing forcing, double setC, int first, int hours)
    {
        var sum = 0.0;
        SeasonSimulator.Run(
            forcing, new LayoutCase(plant with { Heater = new HeaterNumbers(1e5, setC, 1) }, null),
            row => sum += row.Hour >= first && row.Hour < first + hours && forcing.Winter.GlobalWPerM2[row.Hour] <= 0 ? row.HeaterW : 0);
        return sum / 1000;
    }
}
