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
        "bought for barrels 34a90da2", "bought for collector 27eec94b", "bought for compost heap 4ae344cf", "bought for day-heat store 5e633f3d",
        "bought for drive bef70f45", "bought for electrics 8e06ff42", "bought for freeze protection 939e63de", "bought for heat pump 46063325",
        "bought for heat release 958157c5", "bought for house f0c63219", "bought for mount 1362ba89", "bought for pipe run 7be321a1",
        "bought for pump and control a25a9075", "bought for stand-by heater 58ee0a6c", "bought for tank de9ef5dc", "cautions 5f442e61",
        "checks cfb2a6ae", "doubts 497772d5", "missing e74e1bcb", "numbers 705e1a29",
        "papers 90428d30", "places b9c2cca4", "scheme d87701a9", "settings 9d44861d",
        "supply 5f5e2d6f", "titles d2b69477", "wires 67b0f6f4",
    ];

    private static readonly string[] Read =
    [
        "choices 299b4135", "frost hollow cd4e44ad", "small d766068b", "wide e89a7e3c",
    ];

    private static readonly string[] Lonely =
    [
        "bought for barrels fef003d7", "bought for collector c649f7d4", "bought for compost heap 94236003", "bought for day-heat store 66efda9c",
        "bought for drive be405bcf", "bought for electrics 54139106", "bought for freeze protection a30745b9", "bought for heat release fa7a6ada",
        "bought for house a85e12c2", "bought for mount 0d1b6658", "bought for pipe run f7a18470", "bought for pump and control 64fdbfa8", "bought for tank 6790f559",
        "cautions 70f5b1f1", "checks 0afbf724", "doubts 8ecf1a22", "missing b2e6a685", "numbers f27e3ed3", "papers 02b958d4", "places 0046c167", "scheme 06ead730",
        "settings acef3a97", "supply d9e5b51b", "titles 1952855b", "wires 3fcfec50",
    ];

    private static readonly string[] Lacking =
    [
        "bought for barrels 03117f6e", "bought for bench d55fd16d", "bought for collector 7a81f0b1", "bought for compost heap 11dd9aac",
        "bought for day-heat store 308928eb", "bought for drive 18b0f0e7", "bought for electrics 70f3b0e0", "bought for freeze protection 4c5190e4",
        "bought for heat pump 912b6446", "bought for heat release 2369659e", "bought for house 914d88a5", "bought for mount 864dd916",
        "bought for pipe run c51ba5ec", "bought for pump and control ed71ad78", "bought for stand-by heater ca59364f", "bought for tank f678b782",
        "cautions 1919ff33", "checks f53ce846", "doubts 9be7a277", "missing ac29b882", "numbers 117162a5", "papers 9234424d", "places 1c6b4abd", "scheme 87a5b932",
        "settings 01621302", "supply 98bbb5c8", "titles 294a2f59", "wires 67f06c96",
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
