using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Each danger is warned of where it is, once, and nowhere else. The topics under "now" were all missing before.</summary>
public sealed class CautionTests
{
    private static readonly (string, string) Bench = ("frost_limit_c = 2.0", "frost_limit_c = 2.0\nbench_enough_m2 = 2.4");

    private static string[] Topics(params (string Key, object Value)[] choices) => Topics([], choices);

    private static string[] Topics((string, string)[] changes, (string Key, object Value)[] choices)
    {
        using var small = new SmallScenario(changes);
        var scenario = small.Read();
        var layout = choices is [("collector", _)] ? SmallScenario.Solar(scenario) : SmallScenario.Of(scenario, choices);
        var said = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario))).Of(layout).Cautions.Select(c => c.Topic).ToArray();
        Assert.Equal(said.Distinct(), said);
        return said;
    }

    [Fact]
    public void A_bare_house_and_one_with_barrels_are_warned_of_no_flame_and_no_power_cut()
    {
        Assert.Empty(Topics());
        Assert.Equal(["Weight and drowning", "Full barrels in a house given up"], Topics(("barrel", "barrel-200-used"), ("barrel_count", 4)));
    }

    [Fact]
    public void A_heated_bench_warns_of_its_fleece_and_an_unheated_one_does_not()
    {
        Assert.Contains("Fleece over heat", Topics([Bench], [("bench", "bench-mat-120"), ("bench_set_c", 4)]));
        Assert.DoesNotContain("Fleece over heat", Topics([Bench], [("bench", "bench-fleece")]));
    }

    [Theory]
    [InlineData("lining", "bubble-lining-large")]
    [InlineData("night_cover", "aluminised-hand")]
    public void What_hangs_under_the_roof_warns_of_ladder_snow_and_fire(string key, string id)
    {
        var said = Topics((key, id));
        Assert.Contains("Working at height", said);
        Assert.Contains("Snow on the house", said);
        Assert.Contains("Film and cover", said);
        Assert.DoesNotContain("Power cut", said);
    }

    [Fact]
    public void Seals_make_the_house_tight_and_want_no_ladder()
    {
        var said = Topics(("sealing", "sealing-basic"));
        Assert.Equal(["Damp", "Carbon monoxide from a makeshift flame"], said);
    }

    [Fact]
    public void Collectors_warn_of_glass_snow_and_ladder()
    {
        var said = Topics(("collector", "flat-plate-2m2"));
        Assert.Superset(new HashSet<string> { "Glass", "Snow on the collectors", "Lifting collectors", "Working at height", "Power cut" }, said.ToHashSet());
        Assert.DoesNotContain("Carbon monoxide from a makeshift flame", said);
    }

    [Fact]
    public void A_heater_fails_with_the_current_and_then_tempts_to_a_flame() =>
        Assert.Superset(new HashSet<string> { "Carbon monoxide from a makeshift flame", "Power cut", "Fire" }, Topics(("heater", "fan-heater-1500"), ("heater_set_c", 4)).ToHashSet());

    [Fact]
    public void A_cover_that_moves_by_itself_says_so() =>
        Assert.Contains("Moving cover", Topics(("night_cover", "aluminised-motor")));

    // Ice takes 1.09 times the room of its water: below 1/1.09 = 92 % it fits.
    [Fact]
    public void Barrels_left_to_freeze_are_let_down_below_92_percent()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var judged = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario))).Of(SmallScenario.Of(scenario, ("barrel", "barrel-200-used"), ("barrel_count", 4)));
        var text = judged.Cautions.Single(c => c.Topic == "Full barrels in a house given up").Text;
        Assert.Contains("filled to 97 %", text, StringComparison.Ordinal);
        Assert.Contains("below 92 %", text, StringComparison.Ordinal);
    }
}
