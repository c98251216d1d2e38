using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Scenarios in which every choice stands fixed: nothing to compare, and the answer is still one.</summary>
public sealed class OneLayoutTests
{
    private static readonly (string, string)[] OneChoiceOfEach =
    [
        .. WeighedSample.Short,
        ("sealing = [\"none\", \"sealing-basic\"]", "sealing = \"none\""), ("barrel = [\"none\", \"barrel-200-used\"]", "barrel = \"none\""),
        ("barrel_count = [2, 4, 6]", "barrel_count = 2"), ("collector = [\"none\", \"flat-plate-2m2\"]", "collector = \"none\""),
        ("mount = [\"stand-timber\", \"two-position-rocker\"]", "mount = \"stand-timber\""), ("night_cover = [\"none\", \"aluminised-hand\"]", "night_cover = \"none\""),
        ("lining = [\"none\", \"bubble-lining-large\"]", "lining = \"bubble-lining-large\""), ("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater = \"none\""),
    ];

    [Fact]
    public void A_lining_alone_that_does_not_hold_is_a_near_miss_and_no_fault_of_the_program()
    {
        using var sample = new WeighedSample(OneChoiceOfEach);
        Assert.Single(sample.Tried);
        Assert.False(sample.Judgement.AnythingHolds);
        Assert.Contains("No single change among the choices of the scenario brings it nearer.", sample.Weighing.Miss!.Sentences);
    }

    [Fact]
    public void A_heap_alone_that_does_not_hold_says_that_nothing_stands_behind_it()
    {
        using var sample = new WeighedSample([.. OneChoiceOfEach, ("compost_mix = \"none\"", """
            compost_mix = "chips-manure"
            compost_m3 = 12
            compost_wrap = "wrap-straw-bales"
            compost_coil = "coil-pex-20"
            compost_coil_m = 100
            compost_pump = "solar-pump-19w"
            compost_set_c = 5
            compost_rest_c = 40
            compost_built_days = 0
            compost_glycol_percent = 48
            control_box = "cheapest"
            """)]);
        Assert.Single(sample.Tried);
        Assert.False(sample.Judgement.AnythingHolds);
        Assert.Contains("No heater stands behind the compost heap", sample.Judgement.Answer, StringComparison.Ordinal);
        Assert.Contains("No single change among the choices of the scenario brings it nearer.", sample.Weighing.Miss!.Sentences);
    }
}
