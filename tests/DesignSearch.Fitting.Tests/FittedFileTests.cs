using DesignSearch.Files;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems.Skin;
using DesignSearch.Season.InnerStores;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Fitting.Tests;

/// <summary>fitted.toml is in force while it lies there, and in nothing when it is gone.</summary>
public sealed class FittedFileTests : IDisposable
{
    private static readonly HouseFit Fit = new()
    {
        Loss = new(1.3, 1.17, 1.44, true),
        Sun = new(0.9, 0.7, 1.2, true),
        StoreJPerK = 600_000,
        CouplingWPerK = 90,
        Nights = 9,
        Log = [("a \"log\".csv", new string('a', 64))],
    };

    private readonly string folder = Directory.CreateTempSubdirectory("fitted").FullName;

    public FittedFileTests()
    {
        File.Copy(Repository.At("runs", "murk-sound", "scenario.toml"), Path.Combine(folder, "scenario.toml"));
        foreach (var catalogue in Directory.EnumerateDirectories(Repository.At("catalogs")))
        {
            var copy = Directory.CreateDirectory(Path.Combine(folder, "catalogs", Path.GetFileName(catalogue))).FullName;
            foreach (var file in Directory.EnumerateFiles(catalogue, "*.csv"))
                File.Copy(file, Path.Combine(copy, Path.GetFileName(file)));
        }
    }

    private string FilePath => Path.Combine(folder, FittedReading.FileName);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_is_written_is_read_again_and_deleting_it_undoes_it()
    {
        var drawn = Bare(ScenarioReader.Read(folder));
        File.WriteAllText(FilePath, FittedReading.Text(Fit));
        var scenario = ScenarioReader.Read(folder);
        var (read, house) = (scenario.Greenhouse.Fit!, Bare(scenario).Installation.House);
        Assert.Equal((Fit.Loss, Fit.Sun, Fit.StoreJPerK, Fit.CouplingWPerK, Fit.Nights), (read.Loss, read.Sun, read.StoreJPerK, read.CouplingWPerK, read.Nights));
        Assert.Equal(Fit.Log, read.Log);
        Assert.Contains(scenario.Files, f => f.Name == FittedReading.FileName);
        Assert.Equal(1.3 * drawn.Installation.House.CoverAreaM2, house.CoverAreaM2, 9);
        Assert.Equal(1.3 * drawn.Installation.House.AirChangesPerHour, house.AirChangesPerHour, 9);
        Assert.Equal(0.9 * drawn.Installation.House.LiningTransmittance, house.LiningTransmittance, 9);
        Assert.Equal(new InnerStoreNumbers(600_000, 90), Bare(scenario).Installation.Find<InnerStoreNumbers>());
        File.Delete(FilePath);
        Assert.Equal(drawn.Installation, Bare(ScenarioReader.Read(folder)).Installation);
    }

    [Fact]
    public void The_doubts_that_the_log_narrowed_are_narrowed_and_the_rest_stay()
    {
        File.WriteAllText(FilePath, FittedReading.Text(Fit));
        var built = Bare(ScenarioReader.Read(folder));
        var doubts = Unknowns.Of(built).Select(d => d.Figure).ToList();
        var loss = Assert.Single(doubts, d => d.Name == DoubtWords.Fitted);
        Assert.Equal((1.17 / 1.3, 1.44 / 1.3), (loss.Low, loss.High));
        Assert.DoesNotContain(doubts, d => d.Name is DoubtWords.Loss or DoubtWords.Leaks);
        File.WriteAllText(FilePath, FittedReading.Text(Fit with { Loss = new(1, 0.6, 1.6, false) }));
        Assert.Contains(Unknowns.Of(Bare(ScenarioReader.Read(folder))), d => d.Figure.Name == DoubtWords.Loss);
    }

    [Fact]
    public void The_bounds_of_a_search_are_those_of_the_fitted_house()
    {
        File.WriteAllText(FilePath, FittedReading.Text(Fit));
        var scenario = ScenarioReader.Read(folder);
        var least = new BestSkin(scenario).Of([.. SkinChoices.All.Select(c => (IReadOnlyList<int>)[.. Enumerable.Range(0, scenario.LevelsOf(c).Count)])]);
        Assert.Equal(Bare(scenario).Installation.House.CoverAreaM2, least.CoverAreaM2, 9);
    }

    [Fact]
    public void Slips_in_it_are_told_with_their_lines()
    {
        File.WriteAllText(FilePath, FittedReading.Text(Fit).Replace("factor = 1.300", "factor = \"much\"", StringComparison.Ordinal).Replace("nights = 9", "nights = -3", StringComparison.Ordinal));
        var thrown = Assert.Throws<InputException>(() => ScenarioReader.Read(folder));
        Assert.Equal([3, 7], thrown.Faults.Select(f => f.Line));
    }

    private static BuiltLayout Bare(Scenario scenario) => LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices));
}
