using System.Diagnostics;
using System.Text.Json;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class IndependentSolverTests
{
    private const string Python = "/usr/bin/python3";

    [SkippableFact]
    public void A_cold_week_of_the_house_alone_agrees_with_scipy()
    {
        var present = HasSciPy();
        Assert.False(!present && Environment.GetEnvironmentVariable("DESIGNSEARCH_NO_SKIP") == "1", "Python with SciPy is not installed, and no check may be skipped.");
        Skip.IfNot(present, "Python with SciPy is not installed.");

        var winter = MadeWinter.Of(7, meanC: -5);
        var forcing = MadeWinter.Forcing(winter);
        var layout = MadeLayout.Bare with
        {
            House = MadeLayout.House with { NightCoverResistanceM2KPerW = 0.2, VentWPerK = 0 },
            Barrels = new(600, 8, 0.2),
        };
        var means = new List<double>();
        SeasonSimulator.Run(forcing, new LayoutCase(layout, null), row => means.Add(row.AirMeanC));
        var fine = new List<double>();
        SeasonSimulator.Run(forcing, new LayoutCase(layout, null), row => fine.Add(row.AirMeanC), 10);

        var theirs = JsonSerializer.Deserialize<double[]>(Ask(Repository.At("tests", "DesignSearch.Season.Tests", "Kernel", "IndependentSolver.py"), JsonSerializer.Serialize(Coefficients(forcing, layout))))!;
        const string source = "SciPy LSODA, own right-hand side, same coefficients, tolerance 1e-8";
        double Mean(List<double> ours) => ours.Zip(theirs, (a, b) => a - b).Average();
        double Worst(List<double> ours) => ours.Zip(theirs, (a, b) => Math.Abs(a - b)).Max();
        Validation.Within("house SciPy week mean difference", "K, hour means at 300 s", -0.05, 0.05, Mean(means), source);
        Validation.Within("house SciPy week worst hour", "K, hour means at 300 s", 0, 0.5, Worst(means), source);
        Validation.Within("house SciPy week worst hour at 10 s", "K, hour means", 0, 0.02, Worst(fine), source);
    }

    private static object Coefficients(WinterForcing forcing, Installation layout)
    {
        var (a, house, winter) = (forcing.Assumptions, layout.House, forcing.Winter);
        var soil = a.SoilVolumetricCapacityJPerM3K * house.FloorAreaM2;
        var k = a.SoilConductivityWPerMK * house.FloorAreaM2;
        double[] layers = [a.SoilSurfaceLayerM, a.SoilMiddleLayerM, a.SoilDeepLayerM];
        double Ground(double depth, int hour = 0) =>
            winter.Ground.TemperatureC(depth, winter.Start.AddHours(hour).DayOfYear + hour % 24 / 24.0, a.SoilConductivityWPerMK / a.SoilVolumetricCapacityJPerM3K);
        var share = layout.Barrels.SunShare;
        return new
        {
            coverM2 = house.CoverAreaM2,
            sheet = Array.ConvertAll(winter.SunZenithDeg, z => house.CoverResistanceM2KPerW + (z >= 90 ? house.NightCoverResistanceM2KPerW : 0)),
            air = winter.AirC,
            sky = winter.SkyC,
            emissivity = a.CoverEmissivity,
            skyView = house.SkyViewFactor,
            film = Array.ConvertAll(winter.WindMPerS, v => 2.8 + 3.0 * 0.6 * v),
            leak = Array.ConvertAll(winter.WindMPerS, v => 1253 * house.VolumeM3 * (house.AirChangesPerHour + house.AirChangesPerHourPerMPerS * 0.6 * v) / 3600),
            sun = Array.ConvertAll(winter.GlobalWPerM2, g => 24 * g * a.SunSensibleShare),
            sunBarrels = share,
            sunFloor = (1 - share) * a.SunFloorShare,
            sunAir = (1 - share) * (1 - a.SunFloorShare),
            airCover = a.InsideFilmConvectiveWPerM2K * house.CoverAreaM2,
            airFloor = a.FloorFilmConvectiveWPerM2K * house.FloorAreaM2,
            airBarrels = a.BarrelFilmWPerM2K * layout.Barrels.SurfaceM2,
            floorCover = a.InsideFilmRadiativeWPerM2K * house.FloorAreaM2,
            floorMiddle = k / ((layers[0] + layers[1]) / 2),
            middleDeep = k / ((layers[1] + layers[2]) / 2),
            deepGround = k / (layers[2] / 2),
            edge = house.EdgeLossWPerMK * house.PerimeterM,
            airCapacity = a.AirAndBenchCapacityJPerM2K * house.FloorAreaM2,
            coverCapacity = house.CoverCapacityJPerM2K * house.CoverAreaM2,
            floorCapacity = soil * layers[0],
            middleCapacity = soil * layers[1],
            deepCapacity = soil * layers[2],
            barrelCapacity = layout.Barrels.WaterKg * 4186,
            ground = Enumerable.Range(0, winter.Hours).Select(h => Ground(layers.Sum(), h)),
            start = new[] { winter.AirC[0], winter.AirC[0], Ground(layers[0] / 2), Ground(layers[0] + layers[1] / 2), Ground(layers[0] + layers[1] + layers[2] / 2), Ground(layers[0] / 2) },
        };
    }

    private static bool HasSciPy()
    {
        if (!File.Exists(Python))
            return false;
        using var process = Process.Start(new ProcessStartInfo(Python, ["-c", "import scipy"]) { RedirectStandardError = true })!;
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0;
    }

    private static string Ask(string script, string input)
    {
        using var process = Process.Start(new ProcessStartInfo(Python, [script]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        var answer = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, error.Result);
        return answer;
    }
}
