using System.Diagnostics;
using System.Text.Json;
using DesignSearch.Season.Covers;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
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

        // Two films that let heat radiation through, a night cover, pots, barrels: every way that heat has in the house but the wall's.
        var winter = MadeWinter.Of(7, meanC: -5);
        var forcing = MadeWinter.Forcing(winter);
        var film = new CoverLayer(0.0005, 0.4, 0.5);
        var cover = CoverMakeUp.Of([film, film], 0.05, 45);
        var layout = MadeLayout.Bare with
        {
            House = MadeLayout.House with
            {
                NightCoverResistanceM2KPerW = 0.2,
                VentWPerK = 0,
                CoverResistanceM2KPerW = cover.ResistanceM2KPerW,
                CoverRadiation = cover.LongWave,
                Contents = new(60_000, 1.2, 0.3),
            },
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
        Validation.Within("house SciPy week mean difference", "K, hour means at 300 s", -0.05, 0.05, Mean(means), source, "SeasonSimulator.Run");
        Validation.Within("house SciPy week worst hour", "K, hour means at 300 s", 0, 0.5, Worst(means), source, "SeasonSimulator.Run");
        Validation.Within("house SciPy week worst hour at 10 s", "K, hour means", 0, 0.02, Worst(fine), source, "SeasonSimulator.Run");
    }

    private static object Coefficients(WinterForcing forcing, Installation layout)
    {
        var (a, house, winter) = (forcing.Assumptions, layout.House, forcing.Winter);
        var c = HouseTerms.From(layout, a);
        var depth = HouseTerms.SoilDepthM(a);
        double Soil(int layer) => HouseTerms.SoilStartC(forcing, layer);
        var (outside, ground) = (winter.AirC, Enumerable.Range(0, winter.Hours).Select(h => WinterForcing.GroundAtC(winter, h, depth, a)));
        return new
        {
            outside,
            sky = winter.SkyC,
            ground,
            film = Array.ConvertAll(winter.WindMPerS, v => 2.8 + 3.0 * 0.6 * v),
            leak = winter.WindMPerS.Select((v, h) => 1253 * WinterForcing.Density(outside[h], winter.Place.ElevationM) * house.VolumeM3 * (house.AirChangesPerHour + house.AirChangesPerHourPerMPerS * 0.6 * v) / 3600),
            link = Array.ConvertAll(winter.SunZenithDeg, z => house.CoverAreaM2 / (house.CoverResistanceM2KPerW + (z >= 90 ? house.NightCoverResistanceM2KPerW : 0))),
            sun = Array.ConvertAll(winter.GlobalWPerM2, g => 24 * g),
            coverM2 = house.CoverAreaM2,
            emissivity = house.CoverRadiation.CoverToOutside,
            skyView = house.SkyViewFactor,
            innerAir = c.InnerAir,
            innerAirPerRoot = c.InnerAirPerRoot,
            contentsInner = c.ContentsInner,
            contentsAir = c.ContentsAir,
            sunContents = c.SunContents,
            floorCover = c.FloorCover,
            floorOut = c.FloorOutWPerK4,
            airOut = c.AirOutWPerK4,
            innerOut = c.InnerOutWPerK4,
            passes = Array.ConvertAll(winter.SunZenithDeg, z => z >= 90 ? 0.0 : 1),
            aroundBelow = forcing.Hours.ToArray().Select(f => f.AroundBelowK),
            innerFloor = c.InnerFloor,
            latent = c.Latent,
            floorAir = c.FloorAir,
            floorAirSwing = c.FloorAirSwing,
            barrelAir = c.BarrelAir,
            floorSoil = c.FloorSoil,
            soil12 = c.Soil12,
            soil23 = c.Soil23,
            soilDeep = c.SoilDeep,
            edge = c.Edge,
            barrelIce = c.BarrelIce,
            barrelMelts = c.BarrelMelts,
            sunAir = c.SunAir,
            sunFloor = c.SunFloor,
            sunBarrels = c.SunBarrels,
            capacity = new { air = c.AirStore, cover = c.CoverStore, floor = c.FloorStore, soil1 = c.Soil1Store, soil2 = c.Soil2Store, soil3 = c.Soil3Store, barrels = c.BarrelStore, wall = c.WallStore, contents = c.ContentsStore },
            start = new[] { outside[0], outside[0], outside[0], Soil(1), Soil(2), Soil(3), outside[0], outside[0], outside[0] },
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
