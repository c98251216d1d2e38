using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Season.Compost;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class CompostTests : IDisposable
{
    private readonly SmallScenario small = new();

    public void Dispose() => small.Dispose();

    [Fact]
    public void A_heap_is_built_priced_warned_of_and_warms_the_house()
    {
        var scenario = small.Read();
        var judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        var layout = SmallScenario.Of(
            scenario,
            ("compost_mix", "chips-manure"), ("compost_m3", 12), ("compost_wrap", "wrap-fleece-film"), ("compost_coil", "coil-pex-20"),
            ("compost_coil_m", 100), ("compost_pump", "solar-pump-19w"), ("compost_set_c", 5), ("compost_rest_c", 40), ("compost_glycol_percent", 48));
        var built = LayoutBuilder.Build(scenario, layout);
        Assert.Empty(built.Missing);
        Assert.Equal(12, built.Parts.Single(p => p.Part.Id == "chips-manure").Quantity);
        Assert.InRange(built.Parts.Where(p => p.Part.Id == "coil-pex-20").Sum(p => p.Quantity), 210, 221);
        Assert.Equal(12 * 280 * 0.5, built.Installation.Find<CompostNumbers>()!.DegradableKg, 6);
        // Coil and house pipe of 100 m each, 0.9 and about 0.6 W/(m·K), are 36 W/K in series; the flow takes some away.
        Assert.InRange(built.Installation.Find<CompostNumbers>()!.CoilWPerK, 15, 40);

        var (bare, heap) = (judge.Of(SmallScenario.Of(scenario)), judge.Of(layout));
        Assert.True(heap.FrostDegreeHoursKh < bare.FrostDegreeHoursKh);
        Assert.Contains("12 m³ compost heap", PlantWords.Title(built), StringComparison.Ordinal);
        Assert.All(heap.Winters, w => Assert.InRange(w.Outcome.Books.Of(CompostFlows.Draw) * 1000 / w.Outcome.SeasonHours / 12, 1, 150));
        Assert.All(heap.Winters, w => Assert.InRange(w.Outcome.BalanceResidual, 0, 1e-9));
        Assert.Contains(heap.Cautions, c => c.Topic == "Compost gas");
    }

    [Theory]
    [InlineData(0.4, "too dry at 40 %")]
    [InlineData(0.58, "this mix has 58")]
    [InlineData(0.72, "too wet at 72 %")]
    public void A_mix_outside_the_usual_moisture_is_warned_of(double moisture, string said)
    {
        var folder = Directory.CreateDirectory(Path.Combine(small.Folder, "own")).FullName;
        File.WriteAllText(Path.Combine(folder, "compost-mixes.csv"), FormattableString.Invariant($"id,name,unit,price,price_low,price_high,price_second_hand,life_years,labour_hours,dry_kg_per_m3,degradable_share,rate_per_day,heat_j_per_kg,moisture,note\nmy-mix,My mix,m3,1,1,1,,1,0.6,260,0.45,0.0015,19000000,{moisture},mine\n"));
        var file = Path.Combine(small.Folder, "scenario.toml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("catalogs = [", "catalogs = [\"own\", ", StringComparison.Ordinal));
        var scenario = small.Read();
        var judged = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario))).Of(SmallScenario.Of(
            scenario,
            ("compost_mix", "my-mix"), ("compost_m3", 12), ("compost_coil", "coil-pex-20"), ("compost_coil_m", 100), ("compost_pump", "solar-pump-19w"), ("compost_set_c", 5), ("compost_rest_c", 40)));
        Assert.Contains(said, judged.Cautions.Single(c => c.Topic == "Heat from compost").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_heap_its_choices_sleep()
    {
        var scenario = small.Read();
        Assert.DoesNotContain(SmallScenario.Of(scenario, ("compost_m3", 30)).Awake, c => c.Choice.Key.StartsWith("compost_", StringComparison.Ordinal) && c.Choice.Key != "compost_mix");
    }
}
