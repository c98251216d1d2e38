using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
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
    private const int Others = 100;

    private static readonly string[] Digests =
    [
        "bought for barrels ece9b192", "bought for collector acb7fcd8", "bought for compost heap 1a754c6c", "bought for day-heat store 6e1817ab",
        "bought for drive 1fc1db75", "bought for electrics 2ad7cc9c", "bought for freeze protection 242bd18e", "bought for heat pump 74531251",
        "bought for heat release 3fc3fa48", "bought for house abafb56a", "bought for mount b2e5af78", "bought for pipe run b00f7b3c",
        "bought for pump and control 20dd01c0", "bought for stand-by heater 7530784d", "bought for tank eca31b80", "cautions e7e00cef",
        "checks e94a17fd", "doubts 0f6f7563", "missing 1a9f4ea1", "numbers f291bbd0",
        "papers af3f520e", "places 0e6f477c", "scheme 601e7984", "settings 1b933af6",
        "supply 4759820a", "titles 3f9a4ced", "wires 850ad45d",
    ];

    private static readonly string[] Read =
    [
        "choices 6e9fd1a9", "frost hollow 7678d2c3", "small f6b30343", "wide c82ed000",
    ];

    private static readonly string[] Lonely =
    [
        "bought for barrels 3d316219", "bought for collector 2faa38b0", "bought for compost heap 3eafa200", "bought for day-heat store 587aa73a",
        "bought for drive 8121ae26", "bought for electrics 35136ed2", "bought for freeze protection 5e89b590", "bought for heat release 3b867df0",
        "bought for house 152b3083", "bought for mount afa10826", "bought for pipe run ec3bb938", "bought for pump and control 87183ae6", "bought for tank 3ce2f783",
        "cautions e07c44e5", "checks 23311575", "doubts 5a4b1269", "missing f698c703", "numbers 550f2ade", "papers 1295dc70", "places e344640d", "scheme f853c837",
        "settings 6d4aef30", "supply f3ec5e2d", "titles 1580dc49", "wires 85792008",
    ];

    private static readonly string[] Lacking =
    [
        "bought for barrels 8aee69cc", "bought for bench cb8898a9", "bought for collector 52839379", "bought for compost heap 4c5bb449",
        "bought for day-heat store 8f19eb92", "bought for drive 0f4ea618", "bought for electrics 25019669", "bought for freeze protection 360eb1e1",
        "bought for heat pump af7cdd20", "bought for heat release cd5f4f54", "bought for house 1ea56ba3", "bought for mount 56028e0e",
        "bought for pipe run 4e997ecc", "bought for pump and control 67c8639b", "bought for stand-by heater 5aa51fc9", "bought for tank e42bacbd",
        "cautions 17c06210", "checks 2c1999b6", "doubts e743c18c", "missing 6b02954e", "numbers 308611b4", "papers 2868770b", "places 95a1e5aa", "scheme 79e01011",
        "settings a1946504", "supply 01c0d6d4", "titles a5cd7414", "wires c317586e",
    ];

    [SkippableFact]
    public void Pinned_what_random_layouts_are_made_of() => Told(RandomPlants.Of(Plants)).Compare(Digests);

    [SkippableFact]
    public void Pinned_what_random_layouts_without_mains_are_made_of()
    {
        using var house = new LonelyHouse();
        Told(RandomPlants.Lonely(house.Read(), Others)).Compare(Lonely);
    }

    [SkippableFact]
    public void Pinned_what_is_made_where_the_catalogue_lacks_parts_and_the_house_is_another()
    {
        using var all = ProofScenario.Everything();
        Told(RandomPlants.Lacking(all.Read(), Others)).Compare(Lacking);
    }

    [SkippableFact]
    public void Pinned_what_is_read_of_a_scenario()
    {
        Pins.OnlyHere();
        using var small = new SmallScenario();
        using var wide = new SmallScenario(("frost_limit_c = 2.0", "frost_limit_c = 3.5"), ("weight = 0.9", "weight = 0.7"), ("years = 12", "years = 20"));
        var hollow = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));
        var grounds = new[] { new ChoiceGround(46.3, 2), new ChoiceGround(-44, 12) };
        var choices = hollow.Systems.Choices.All.Select(c => $"{c.Key} {c.Title} {c.Under?.Key} {(c as NumberChoice)?.Unit} {Spelt.Of((c as NumberChoice)?.Min)} {Spelt.Of((c as NumberChoice)?.Max)} "
            + Spelt.Of(grounds.SelectMany(g => c.Usual(hollow.Catalogue, g).Append(c.Silent(g)).Append(c.AtRest).Select(v => c.Words(v) + " " + c.TitledWords(v)))));
        var pins = new Pins();
        pins.Tell("choices", string.Join('\n', choices));
        pins.Tell("frost hollow", Spelt.Of(hollow));
        pins.Tell("small", Spelt.Of(small.Read()));
        pins.Tell("wide", Spelt.Of(wide.Read()));
        pins.Compare(Read);
    }

    private static Pins Told(IEnumerable<(Scenario Scenario, BuiltLayout Built)> plants)
    {
        Pins.OnlyHere();
        var pins = new Pins();
        foreach (var (scenario, built) in plants)
        {
            foreach (var part in built.Parts)
                pins.Tell("bought for " + part.Purpose.System, Spelt.Of(part) + string.Join(',', part.Duties.ToArray()));
            pins.Tell("missing", string.Join('\n', built.Missing));
            pins.Tell("numbers", Spelt.Of(built.Installation));
            pins.Tell("scheme", Spelt.Of(SchemeDrawing.Of(built)));
            pins.Tell("wires", Spelt.Of(WireWriter.Of(built)));
            pins.Tell("places", Spelt.Of(SitePlan.Of(built, scenario)) + Spelt.Of(built.Systems.Select(s => s.Frame(built.Parts))));
            pins.Tell("settings", Spelt.Of(built.Settings(scenario)));
            pins.Tell("cautions", Spelt.Of(built.Systems.SelectMany(s => s.Cautions)) + Spelt.Of(built.Systems.SelectMany(s => s.Upkeep)));
            pins.Tell("doubts", Spelt.Of(built.Systems.SelectMany(s => s.Doubts).Select(d => (object)new { d.Figure.Name, d.Figure.Why, d.Figure.Range, Changed = d.Figure.Ends.Select(e => d.Change(built.Installation, e)) })));
            pins.Tell("papers", Spelt.Of(PlantPapers.Of(scenario, built)));
            pins.Tell("checks", Spelt.Of(Checked.Of(scenario, built, 1000, 40, -18.5, [])));
            pins.Tell("titles", PlantWords.Title(built) + "; " + string.Join("; ", built.Systems.SelectMany(s => s.Words)));
            pins.Tell("supply", Spelt.Of(built.Supply));
        }

        return pins;
    }
}
