using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>
/// What is made of random layouts before a winter is simulated, subject by subject, as it was when it was last looked at; and what is read of three scenarios.
/// A change that was meant moves the digests of its subjects and no others: read what the test wrote beside what it wrote before, and put them in. A part more in the
/// catalogue moves all.
/// </summary>
public sealed class PinnedDesignTests
{
    private const int Plants = 150;

    private static readonly string[] Digests =
    [
        "bought for barrels ece9b192", "bought for collector acb7fcd8", "bought for compost heap 1a754c6c", "bought for day-heat store 6e1817ab",
        "bought for drive 1fc1db75", "bought for electrics 2ad7cc9c", "bought for freeze protection 242bd18e", "bought for heat pump 74531251",
        "bought for heat release 3fc3fa48", "bought for house abafb56a", "bought for mount b2e5af78", "bought for pipe run b00f7b3c",
        "bought for pump and control 20dd01c0", "bought for stand-by heater 7530784d", "bought for tank eca31b80", "cautions 0612405c",
        "checks e94a17fd", "doubts 0f6f7563", "missing 1a9f4ea1", "numbers f291bbd0",
        "papers af3f520e", "places 0e6f477c", "scheme 601e7984", "settings 1b933af6",
        "supply 4759820a", "titles 3f9a4ced", "wires 850ad45d",
    ];

    private static readonly string[] Read = ["choices db4c97c5", "frost hollow bb0064a4", "small b40c195b", "wide 10d64939"];

    [SkippableFact]
    public void Pinned_what_random_layouts_are_made_of()
    {
        OnlyHere();
        var subjects = new SortedDictionary<string, StringBuilder>(StringComparer.Ordinal);
        foreach (var (scenario, built) in RandomPlants.Of(Plants))
        {
            void Tell(string subject, string text)
            {
                if (!subjects.TryGetValue(subject, out var all))
                    subjects.Add(subject, all = new());
                all.Append(text).Append('\n');
            }

            foreach (var part in built.Parts)
                Tell("bought for " + part.Purpose.System, Spelt.Of(part) + string.Join(',', part.Duties.ToArray()));
            Tell("missing", string.Join('\n', built.Missing));
            Tell("numbers", Spelt.Of(built.Installation));
            Tell("scheme", Spelt.Of(SchemeDrawing.Of(built)));
            Tell("wires", Spelt.Of(WireWriter.Of(built)));
            Tell("places", Spelt.Of(SitePlan.Of(built, scenario)) + Spelt.Of(built.Systems.Select(s => s.Frame(built.Parts))));
            Tell("settings", Spelt.Of(built.Settings(scenario)));
            Tell("cautions", Spelt.Of(built.Systems.SelectMany(s => s.Cautions)) + Spelt.Of(built.Systems.SelectMany(s => s.Upkeep)));
            Tell("doubts", Spelt.Of(built.Systems.SelectMany(s => s.Doubts).Select(d => (object)new { d.Figure.Name, d.Figure.Why, d.Figure.Range, Changed = d.Figure.Ends.Select(e => d.Change(built.Installation, e)) })));
            Tell("papers", Spelt.Of(PlantPapers.Of(scenario, built)));
            Tell("checks", Spelt.Of(Checked.Of(scenario, built, 1000, 40, -18.5, [])));
            Tell("titles", PlantWords.Title(built) + "; " + string.Join("; ", built.Systems.SelectMany(s => s.Words)));
            Tell("supply", Spelt.Of(built.Supply));
        }

        Compare(Digests, [.. subjects.Select(s => (s.Key, s.Value.ToString()))]);
    }

    [SkippableFact]
    public void Pinned_what_is_read_of_a_scenario()
    {
        OnlyHere();
        using var small = new SmallScenario();
        using var wide = new SmallScenario(("frost_limit_c = 2.0", "frost_limit_c = 3.5"), ("weight = 0.9", "weight = 0.7"), ("years = 12", "years = 20"));
        var hollow = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));
        var grounds = new[] { new ChoiceGround(46.3, 2), new ChoiceGround(-44, 12) };
        var choices = hollow.Systems.Choices.All.Select(c => $"{c.Key} {c.Title} {c.Under?.Key} {(c as NumberChoice)?.Unit} {Spelt.Of((c as NumberChoice)?.Min)} {Spelt.Of((c as NumberChoice)?.Max)} "
            + Spelt.Of(grounds.SelectMany(g => c.Usual(hollow.Catalogue, g).Append(c.Silent(g)).Append(c.AtRest).Select(v => c.Words(v) + " " + c.TitledWords(v)))));
        Compare(Read, [("choices", string.Join('\n', choices)), ("frost hollow", Spelt.Of(hollow)), ("small", Spelt.Of(small.Read())), ("wide", Spelt.Of(wide.Read()))]);
    }

    private static void OnlyHere() =>
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Sine and cosine may differ in the last bit on another system.");

    private static void Compare(string[] pinned, List<(string Subject, string Text)> found)
    {
        var digests = found.Select(f => f.Subject + " " + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(f.Text)))[..8]).ToList();
        if (pinned.SequenceEqual(digests))
            return;
        var folder = Directory.CreateTempSubdirectory("designsearch-pinned-").FullName;
        foreach (var (subject, text) in found)
            File.WriteAllText(Path.Combine(folder, subject.Replace(' ', '-') + ".txt"), text);
        Assert.Fail($"moved: {string.Join("; ", digests.Except(pinned))}. The texts are in {folder}. Now they are \"{string.Join("\", \"", digests)}\"");
    }
}
