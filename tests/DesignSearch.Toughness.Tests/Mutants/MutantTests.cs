using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using DesignSearch.Climate.Tests;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Reporting;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Journal;
using DesignSearch.Runs.Store;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Spoilt files before the readers that the commands use: no crash, no hang, and each refusal says where.</summary>
public sealed class MutantTests
{
    private const int FirstParts = 4;

    private static readonly string Sample = Repository.At("runs", "sample-finished");

    [Fact]
    public void Scenarios() => new Bench().Run(0.3, Run, "scenario.toml", folder => ScenarioReader.Read(folder));

    [Fact]
    public void The_sample_that_is_spoilt_is_sound()
    {
        var folder = Directory.CreateTempSubdirectory("designsearch-").FullName;
        Run(folder);
        Assert.InRange(ScenarioReader.Read(folder).Files.Count, 20, 100);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Scenarios_that_pass_can_be_simulated() => new Bench().Run(0.02, Run, "scenario.toml", folder =>
    {
        var scenario = ScenarioReader.Read(folder);
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        assessor.Simulate([LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices))]);
    });

    [Theory]
    [InlineData("collectors.csv")]
    [InlineData("mounts.csv")]
    [InlineData("tanks.csv")]
    [InlineData("pumps.csv")]
    [InlineData("small-parts.csv")]
    [InlineData("releases.csv")]
    public void Catalogues(string file) => new Bench().Run(0.04, folder => File.Copy(Repository.At("catalogs", "starter", file), Path.Combine(folder, file)), file, folder =>
    {
        var faults = new FaultList();
        Catalogue.Load([folder], SystemList.All.Kinds, faults);
        faults.ThrowIfAny();
    });

    [Fact]
    public void Stock_lists() => new Bench().Run(0.06, folder => File.WriteAllText(Path.Combine(folder, "stock.csv"), "id,quantity\npex-25,12\nbarrel-200-used,2\nsolar-pump-19w,1\ncage-1000-used,1\n"), "stock.csv", folder =>
    {
        var faults = new FaultList();
        Stock.Load(Path.Combine(folder, "stock.csv"), null, faults);
        faults.ThrowIfAny();
    });

    [Fact]
    public void Layouts()
    {
        var scenario = ScenarioReader.Read(Sample);
        var good = Directory.EnumerateFiles(Path.Combine(Sample, "lists"), "*-bare.toml").Single();
        new Bench().Run(0.1, folder => File.Copy(good, Path.Combine(folder, "layout.toml")), "layout.toml", folder =>
        {
            var faults = new FaultList();
            var path = Path.Combine(folder, "layout.toml");
            var layout = LayoutFileReader.Read(path, path, scenario, faults);
            faults.ThrowIfAny();
            LayoutBuilder.Build(scenario, layout);
        });
    }

    [Theory]
    [InlineData("plain")]
    [InlineData("tmy3")]
    [InlineData("pvgis")]
    [InlineData("nsrdb")]
    [InlineData("nasa")]
    [InlineData("era5")]
    [InlineData("isd-lite")]
    [InlineData("global-hourly")]
    [InlineData("daily")]
    public void Weather_heads_and_rows(string format) => new Bench().Run(0.025, folder => File.WriteAllText(Path.Combine(folder, "w.csv"), string.Join('\n', Text(format).Split('\n').Take(40))), "w.csv", Weather);

    // A stroke falls on any bracket or name, and on the bytes of a packed file; half of a JSON file is none.
    [Theory]
    [InlineData("pvgis json")]
    [InlineData("era5 json")]
    public void Weather_json(string format) => new Bench().Run(0.005, folder => File.WriteAllText(Path.Combine(folder, "w.json"), Text(format)), "w.json", folder => WeatherFile.Read(Path.Combine(folder, "w.json")));

    [Theory]
    [InlineData("plain")]
    [InlineData("pvgis")]
    public void Whole_weather_years(string format) => new Bench().Run(0.005, folder => File.WriteAllText(Path.Combine(folder, "w.csv"), Text(format)), "w.csv", Weather);

    // Each kind of head: by patterns, by places, by labels, by names, and none.
    [Theory]
    [InlineData("isd-lite", "isd-lite")]
    [InlineData("global-hourly", "global-hourly")]
    [InlineData("ghcn-daily-months", "daily")]
    [InlineData("era5-open-interface-json", "era5 json")]
    [InlineData("nasa-hourly", "nasa")]
    [InlineData("tmy3", "tmy3")]
    [InlineData("pvgis-typical-year", "pvgis")]
    [InlineData("nsrdb-satellite", "nsrdb")]
    [InlineData("temperature-logger", "plain")]
    public void Weather_formats(string map, string format) => new Bench().Run(0.02, folder =>
    {
        File.WriteAllText(Path.Combine(folder, "w.csv"), string.Join('\n', Text(format).Split('\n').Take(200)));
        Directory.CreateDirectory(Path.Combine(folder, "formats"));
        File.Copy(Repository.At("src", "DesignSearch.Climate", "Formats", "Maps", map + ".toml"), Path.Combine(folder, "formats", "own.toml"));
    }, "formats/own.toml", Weather);

    [Fact]
    public void Journals()
    {
        var head = new JournalHead("test", 1, 16, []);
        var sample = File.ReadAllLines(Path.Combine(Sample, "journal")).Skip(2).Take(40).ToList();
        var shape = Shape(sample[0]);
        void Make(string folder)
        {
            using (JournalFile.Begin(Path.Combine(folder, "journal"), head, over: false))
            {
            }

            File.AppendAllLines(Path.Combine(folder, "journal"), sample);
        }

        void TakeUp(string path)
        {
            using (JournalFile.TakeUp(path, head, shape))
            {
            }

            JournalFile.TakeUp(path, head, shape).Dispose();
        }

        new Bench().Run(0.04, Make, "journal", folder => TakeUp(Path.Combine(folder, "journal")), leastRefused: 0);

        // The check sums stop nearly every slip, so the rest gets sums that fit what is wrong.
        new Bench().Run(0.05, folder =>
        {
            Make(folder);
            File.WriteAllLines(Path.Combine(folder, "bare"), File.ReadLines(Path.Combine(folder, "journal")).Select(l => l[..l.LastIndexOf(' ')]));
        }, "bare", folder =>
        {
            var path = Path.Combine(folder, "journal");
            File.WriteAllText(path, string.Concat(File.ReadAllText(Path.Combine(folder, "bare")).Split('\n').Select(l => $"{l} {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(l)).AsSpan(0, 4))}\n")));
            TakeUp(path);
        });
    }

    [Fact]
    public void Stored_runs()
    {
        var run = Shortened();
        new Bench().Run(0.04, folder => File.WriteAllText(Path.Combine(folder, "run.json"), run), "run.json", folder => RunStore.Load(new RunFolder(folder)));
        // Values of another kind in every place.
        new Bench(JsonSwap.Spoil).Run(0.04, folder => File.WriteAllText(Path.Combine(folder, "run.json"), run), "run.json", folder => RunStore.Load(new RunFolder(folder)));
        new Bench(JsonSwap.Spoil).Run(0.01, folder => File.WriteAllText(Path.Combine(folder, "run.json"), run), "run.json", folder => RunFiles.WriteAll(RunStore.Load(new RunFolder(folder)), folder));
        new Bench().Run(0.01, folder => File.WriteAllText(Path.Combine(folder, "run.json"), run), "run.json", folder => RunFiles.WriteAll(RunStore.Load(new RunFolder(folder)), folder));
    }

    private static JournalShape Shape(string line)
    {
        var parts = line[..line.LastIndexOf(' ')].Split(';').Select(p => p.Split(',').Length).ToList();
        return new(parts[0], parts[1], parts[2]);
    }

    private static void Weather(string folder) => WeatherFile.Read(Path.Combine(folder, "w.csv"));

    private const string Place = "# latitude: -44.2\n# longitude: 169.8\n# elevation_m: 420\n# zone_hours: 11\n";

    private static string Text(string format)
    {
        var sky = new MadeSky();
        return format switch
        {
            "tmy3" => sky.Tmy3(),
            "pvgis" => sky.PvgisTypical(means: true, 0),
            "nsrdb" => sky.Nsrdb(60, 30),
            "nasa" => sky.Nasa(),
            "era5" => sky.Era5(),
            "era5 json" => sky.Era5Json(),
            "pvgis json" => sky.PvgisTypicalJson(),
            "isd-lite" => Place + sky.IsdLite(),
            "global-hourly" => sky.GlobalHourly(),
            "daily" => Place + sky.Daily("months"),
            _ => sky.Plain()
        };
    }

    /// <summary>
    /// Puts the sample's scenario into a folder, with the catalogues beside it: the text, and so each stroke, is the same wherever the checkout lies. Of the
    /// catalogues, which are spoilt elsewhere and take most of the time of reading, the first parts of a kind and those that the scenario names.
    /// </summary>
    internal static void Run(string folder)
    {
        var text = File.ReadAllText(Path.Combine(Sample, "scenario.toml")).Replace("../../catalogs/starter", "starter", StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "scenario.toml"), text);
        var own = Directory.CreateDirectory(Path.Combine(folder, "starter"));
        foreach (var file in Directory.EnumerateFiles(Repository.At("catalogs", "starter")))
            File.WriteAllLines(Path.Combine(own.FullName, Path.GetFileName(file)), Few(File.ReadAllLines(file), text));
    }

    private static IEnumerable<string> Few(string[] lines, string scenario)
    {
        var head = Array.FindIndex(lines, l => l.StartsWith("id,", StringComparison.Ordinal));
        return lines.Where((l, i) => i <= head + FirstParts || scenario.Contains('"' + l.Split(',')[0] + '"', StringComparison.Ordinal));
    }

    // The finished sample with two layouts of its ranking, so that a stroke falls on what matters.
    private static string Shortened()
    {
        var run = JsonNode.Parse(File.ReadAllText(Path.Combine(Sample, "run.json")))!;
        var judgement = run["judgement"]!;
        var ranking = judgement["ranking"]!.AsArray();
        while (ranking.Count > 3)
            ranking.RemoveAt(3);
        judgement["front"] = new JsonArray(0, 3, 2, 1);
        judgement["picks"] = new JsonObject { ["cheapestThatHolds"] = 1, ["bestValue"] = 2, ["mostProtection"] = 3 };
        return run.ToJsonString(new JsonSerializerOptions { WriteIndented = true });
    }
}
