using System.Diagnostics;
using DesignSearch.Climate.Tests;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Devices, pipes, folders and broken links in the place of every file that the program opens: a sentence and 2, at once.</summary>
public sealed class InputKindTests
{
    private static readonly string[] Kinds = ["device", "pipe", "folder", "broken link"];

    [SkippableTheory]
    [InlineData("scenario.toml", "check")]
    [InlineData("catalogue/barrels.csv", "check")]
    [InlineData("stock.csv", "check")]
    [InlineData("w.csv", "check")]
    [InlineData("formats/own.toml", "check")]
    [InlineData("w.csv", "weather")]
    [InlineData("layout.toml", "simulate")]
    [InlineData("layouts.csv", "simulate many")]
    [InlineData("layouts/1.toml", "simulate many in a folder")]
    [InlineData("run.json", "report")]
    [InlineData("run.json", "compare")]
    [InlineData("journal", "resume")]
    public void What_is_no_plain_file_ends_in_a_sentence(string name, string command)
    {
        Skip.If(OperatingSystem.IsWindows(), "Pipes and devices are made the way of Linux and macOS.");
        foreach (var kind in Kinds)
        {
            using var run = Whole();
            var path = Path.Combine(run.Folder, name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.Delete(path);
            if (kind == "pipe")
                Process.Start("mkfifo", [path]).WaitForExit();
            else if (kind == "folder")
                Directory.CreateDirectory(path);
            else
                File.CreateSymbolicLink(path, kind == "broken link" ? "nowhere" : "/dev/zero");
            string[] words = command switch
            {
                "weather" => ["weather", path],
                "simulate" => ["simulate", run.Folder, "--layout", path],
                "simulate many" => ["simulate", run.Folder, "--layouts", path],
                "simulate many in a folder" => ["simulate", run.Folder, "--layouts", Path.GetDirectoryName(path)!],
                "resume" => ["search", run.Folder, "--resume", "--evaluations", "64"],
                _ => [command, run.Folder],
            };
            var ended = Inside.RunWithin(TimeSpan.FromSeconds(45), [.. words, "--quiet"]);
            // A folder among others is passed over where files are looked for by their endings.
            var passes = kind == "folder" && name is "formats/own.toml";
            Assert.True(ended.Code == (passes ? 0 : 2), $"{kind} as {name}: {ended.Code} {ended.Error}");
            Assert.True(passes || ended.Error.Contains("expected ", StringComparison.Ordinal), ended.Error);
        }
    }

    [SkippableFact]
    public void An_endless_standard_input_is_cut_off()
    {
        Skip.IfNot(File.Exists("/dev/zero"), "There is no /dev/zero here.");
        using var run = new SmallScenario();
        var ended = Designsearch.RunIn(["/bin/sh", "-c", "exec 3</dev/zero; exec \"$@\" <&3", "sh"], [], "simulate", run.Folder, "--layouts", "-", "--quiet").With(2);
        Assert.Contains("at most 5 MB", ended.Error, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void The_folder_that_is_spoilt_is_sound()
    {
        using var run = Whole();
        var ended = Inside.Run("check", run.Folder, "--quiet");
        Assert.True(ended.Code == 0, ended.Error);
    }

    private static readonly string[] Left = ["mean_", "sun_", "wind_m", "humidity_", "character", "latitude_", "longitude_", "elevation_", "zone_"];

    private static SmallScenario Whole()
    {
        var run = new SmallScenario();
        MutantTests.Run(run.Folder);
        Directory.Move(Path.Combine(run.Folder, "starter"), Path.Combine(run.Folder, "catalogue"));
        File.WriteAllText(Path.Combine(run.Folder, "w.csv"), new MadeSky().Plain());
        File.WriteAllText(Path.Combine(run.Folder, "stock.csv"), "id,quantity\npex-25,12\n");
        File.Copy(Repository.At("runs", "sample-finished", "run.json"), Path.Combine(run.Folder, "run.json"));
        var scenario = Path.Combine(run.Folder, "scenario.toml");
        var lines = File.ReadAllLines(scenario).Select(l => l.StartsWith("catalogs = ", StringComparison.Ordinal) ? "catalogs = [\"catalogue\"]\nstock = \"stock.csv\"" : l)
            // The made sky lies in the south, and says itself where.
            .Select(l => l.Replace("\"11-01\"", "\"05-01\"", StringComparison.Ordinal).Replace("\"03-31\"", "\"09-30\"", StringComparison.Ordinal))
            .Where(l => !Left.Any(key => l.StartsWith(key, StringComparison.Ordinal))).ToList();
        lines.Insert(lines.IndexOf("[climate]") + 1, "weather_file = \"w.csv\"");
        File.WriteAllLines(scenario, lines);
        return run;
    }
}
