using System.Diagnostics;
using System.Text.RegularExpressions;
using DesignSearch.Climate.Tests;
using DesignSearch.Runs.Starting;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Every command that README and guide tell a person to type works as it stands there; every page they name is there.</summary>
public sealed partial class CommandsInDocsTests
{
    private const string Choices = "[choices]";
    private const string Search = "[search]";

    [SkippableTheory]
    [InlineData("README.md", 10)]
    [InlineData("docs/guide.md", 8)]
    public void Every_command_works(string page, int least)
    {
        Skip.If(OperatingSystem.IsWindows(), "The commands are run by a shell of Linux or macOS.");
        var commands = Blocks().Matches(File.ReadAllText(Repository.At(page))).Where(m => m.Groups["kind"].Length == 0).SelectMany(m => m.Groups["lines"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries)).ToList();
        Assert.True(commands.Count >= least, $"only {commands.Count} commands on {page}");
        var folder = Checkout();
        foreach (var command in commands)
        {
            using var shell = Process.Start(new ProcessStartInfo("/bin/bash", ["-c", command])
            {
                WorkingDirectory = folder,
                RedirectStandardError = true,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                Environment = { ["PATH"] = Path.Combine(folder, "bin") + ":" + Environment.GetEnvironmentVariable("PATH") },
            })!;
            var (output, error) = (shell.StandardOutput.ReadToEndAsync(), shell.StandardError.ReadToEndAsync());
            // Whoever is asked takes what stands in brackets.
            if (command.Contains(" new ", StringComparison.Ordinal))
                shell.StandardInput.Write(string.Concat(Enumerable.Repeat("\n", NewCase.Questions.Count)));
            shell.StandardInput.Close();
            shell.WaitForExit();
            Assert.True(shell.ExitCode == 0, $"{page}: {command}: ended with {shell.ExitCode}: {error.Result}{output.Result}");
            if (command.Contains(" new ", StringComparison.Ordinal))
                Shorten(Path.Combine(folder, "runs", "my-house", "scenario.toml"));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Every_link_leads_somewhere()
    {
        foreach (var page in Directory.EnumerateFiles(Repository.At("docs"), "*.md").Append(Repository.At("README.md")).Append(Repository.At("DEVELOPERS.md")))
        {
            foreach (var target in Links().Matches(File.ReadAllText(page)).Select(m => m.Groups["to"].Value))
                Assert.True(Path.Exists(Path.Combine(Path.GetDirectoryName(page)!, target)), $"{Path.GetFileName(page)} links to {target}, which is not there");
        }
    }

    // What a fresh checkout holds, with a short search, a weather file of one's own, and the program under both its names.
    private static string Checkout()
    {
        var folder = Directory.CreateTempSubdirectory("designsearch-").FullName;
        foreach (var part in new[] { "catalogs", "runs/sample-finished" })
        {
            foreach (var file in Directory.EnumerateFiles(Repository.At(part), "*", SearchOption.AllDirectories))
                Copy(file, Path.Combine(folder, Path.GetRelativePath(Repository.Root, file)));
        }

        var scenario = File.ReadAllText(Repository.At("runs", "frost-hollow", "scenario.toml"));
        Write(Path.Combine(folder, "runs", "frost-hollow", "scenario.toml"), Short(scenario));
        Write(Path.Combine(folder, "my-place.csv"), new MadeSky().Plain());
        var program = $"dotnet \"{Path.Combine(AppContext.BaseDirectory, "designsearch.dll")}\"";
        var dotnet = Environment.ProcessPath is { } host && Path.GetFileName(host) == "dotnet" ? host : "/usr/bin/dotnet";
        Script(folder, "designsearch", $"exec {program} \"$@\"");
        // "dotnet run … -- words" is the program; "dotnet test" is what runs this.
        Script(folder, "dotnet", $"if [ \"$1\" = test ]; then exit 0; fi\nif [ \"$1\" = run ]; then while [ \"$1\" != -- ]; do shift; done; shift; exec {program} \"$@\"; fi\nexec \"{dotnet}\" \"$@\"");
        return folder;
    }

    // A short winter, few layouts, and the choices of the finished sample, so that each proof of the cheapest takes seconds; the commands stay as they are typed.
    private static string Short(string scenario)
    {
        var few = File.ReadAllText(Repository.At("runs", "sample-finished", "scenario.toml"));
        var own = Wintry(scenario[..scenario.IndexOf(Choices, StringComparison.Ordinal)]);
        return own + few[few.IndexOf(Choices, StringComparison.Ordinal)..few.IndexOf(Search, StringComparison.Ordinal)] + Search + "\nseed = 1\nevaluations = 48\nranked = 4\nunseen_winters = 5\n";
    }

    private static string Wintry(string scenario)
    {
        var own = scenario.Replace("start = \"11-01\"", "start = \"12-20\"", StringComparison.Ordinal).Replace("end = \"03-31\"", "end = \"01-20\"", StringComparison.Ordinal);
        Assert.Contains("start = \"12-20\"", own, StringComparison.Ordinal);
        Assert.Contains("end = \"01-20\"", own, StringComparison.Ordinal);
        return own;
    }

    // On the build machine the case that was asked for keeps all its choices: nothing is ruled out, and the proof goes through all there is.
    private static void Shorten(string scenario)
    {
        var text = File.ReadAllText(scenario);
        File.WriteAllText(scenario, Longer.IsOn ? Wintry(Evaluations().Replace(text, "evaluations = 48")) : Short(text));
    }

    private static void Script(string folder, string name, string text)
    {
        var path = Path.Combine(folder, "bin", name);
        Write(path, "#!/bin/bash\n" + text + "\n");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    private static void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        File.Copy(from, to);
    }

    [GeneratedRegex(@"evaluations = \d+")]
    private static partial Regex Evaluations();

    [GeneratedRegex(@"^```(?<kind>\w*)\n(?<lines>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Blocks();

    [GeneratedRegex(@"\]\((?<to>[^)#:]+)(#[^)]*)?\)")]
    private static partial Regex Links();
}
