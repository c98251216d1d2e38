using DesignSearch.Fitting.Estimate;
using DesignSearch.Fitting.Logs;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Season;
using DesignSearch.Testing;

namespace DesignSearch.Fitting.Tests.Truth;

/// <summary>Scenarios to draw houses in, and a log of one taken through the reader and the fit.</summary>
internal static class Houses
{
    // The house stands in the scenario's climate with mains, whatever else is said of it.
    private static readonly string[] Names = ["frost-hollow", "murk-sound", "high-saddle", "potting-lane"];

    private static readonly Lazy<Scenario[]> Read = new(() => [.. Names.Select(n => ScenarioReader.Read(Repository.At("runs", n)))]);

    public static IReadOnlyList<Scenario> All => Read.Value;

    public static Installation Bare(Scenario scenario) => LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices)).Installation;

    /// <summary>What the log's text tells.</summary>
    public static FitResult Fit(Scenario scenario, params IReadOnlyList<(string Name, string Text)> files)
    {
        var folder = Directory.CreateTempSubdirectory("fit").FullName;
        try
        {
            var paths = files.Select(f => Path.Combine(folder, f.Name)).ToArray();
            for (var i = 0; i < paths.Length; i++)
                File.WriteAllText(paths[i], files[i].Text);
            return HouseFitting.Run(scenario, Layout.Bare(scenario.Systems.Choices), LogReader.Read(paths, scenario.Place, new()));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>By how much the fitted house's loss in a winter's nights misses the true one's, as a logarithm.</summary>
    public static double Miss(TrueHouse truth, FitResult fit) =>
        Math.Log(TrueHouse.Slope(fit.Fit?.On(Bare(truth.Scenario)) ?? Bare(truth.Scenario), truth.DrawnWeather) / truth.SlopeWPerK);

    /// <summary>Half the width of what is stated, 19 of 20 times, as a logarithm.</summary>
    public static double Half(FitResult fit) => Math.Log(fit.Loss.High / fit.Loss.Value);
}
