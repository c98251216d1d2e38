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
            ("compost_coil_m", 100), ("compost_pump", "solar-pump-19w"), ("compost_set_c", 5), ("compost_rest_c", 40));
        var built = LayoutBuilder.Build(scenario, layout);
        Assert.Empty(built.Missing);
        Assert.Equal(12, built.Parts.Single(p => p.Part.Id == "chips-manure").Quantity);
        Assert.InRange(built.Parts.Single(p => p.Part.Id == "coil-pex-20").Quantity, 200, 220);
        Assert.Equal(12 * 280 * 0.5, built.Installation.Compost.DegradableKg, 6);
        // Coil and house pipe of 100 m each, 0.9 and about 0.6 W/(m·K), are 36 W/K in series; the flow takes some away.
        Assert.InRange(built.Installation.Compost.CoilWPerK, 15, 40);

        var (bare, heap) = (judge.Of(SmallScenario.Of(scenario)), judge.Of(layout));
        Assert.True(heap.FrostDegreeHoursKh < bare.FrostDegreeHoursKh);
        Assert.Contains("12 m³ compost heap", LayoutWords.Title(built), StringComparison.Ordinal);
        Assert.All(heap.Winters, w => Assert.InRange(w.Outcome.CompostKwh * 1000 / w.Outcome.SeasonHours / 12, 1, 150));
        Assert.All(heap.Winters, w => Assert.InRange(w.Outcome.BalanceResidual, 0, 1e-9));
        Assert.Contains(heap.Cautions, c => c.Topic == "Compost gas");
    }

    [Fact]
    public void Without_a_heap_its_choices_sleep()
    {
        var scenario = small.Read();
        Assert.DoesNotContain(SmallScenario.Of(scenario, ("compost_m3", 30)).Awake, c => c.Choice.Key.StartsWith("compost_", StringComparison.Ordinal) && c.Choice.Key != "compost_mix");
    }
}
