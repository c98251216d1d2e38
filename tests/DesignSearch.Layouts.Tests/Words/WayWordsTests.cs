using DesignSearch.Layouts.Decide.Certify;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Solar;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Every sentence about ways, doubts, proof and sureness that the samples do not come to, word by word.</summary>
public sealed class WayWordsTests(ShortSample shorter) : IClassFixture<ShortSample>
{
    private JudgedLayout One => shorter.Weighed.Judgement.Ranking[0];

    private Scenario Scenario => shorter.Weighed.Scenario;

    [Fact]
    public void Ways_are_held_against_each_other_in_words()
    {
        Assert.Equal(["fixed", "two positions a day", "turned in steps", "follows the sun"], Enum.GetValues<TurningKind>().Select(WayWords.Mount));
        Assert.Equal("Only \"fixed\" holds, for 1235 crowns over the years.", WayWords.OnlyMount("fixed", 1234.6m, "crowns", true));
        Assert.Equal("Only of \"fixed\" was anything found that holds, for 1235 crowns over the years (searched, not proved).", WayWords.OnlyMount("fixed", 1234.6m, "crowns", false));
        Assert.Equal("At equal protection \"a\" is the cheapest way; \"b\" costs 5 crowns more over the years.", WayWords.CheapestMount("a", "b", new(5, null, true), "crowns"));
        Assert.Equal("At equal protection \"a\" is the cheapest way found; \"b\" costs 5 crowns more over the years (searched, not proved).", WayWords.CheapestMount("a", "b", new(5, null, false), "crowns"));
        Assert.Equal("\"a\" and \"b\" make no difference, build what you like: they are 5 crowns apart over the years, less than model and prices are known to.", WayWords.MountsAlike("a", "b", 5, "crowns", true));
        Assert.Equal("It makes no difference, build what you like: with and without, the cheapest that hold are 5 crowns apart over the years, less than model and prices are known to.", WayWords.MakesNoDifference(new(5, null, true), "crowns"));
        Assert.Equal("It pays: without seals the cheapest found that holds costs 5 crowns more over the years (searched, not proved).", WayWords.Pays("seals", new(5, null, false), "crowns"));
        Assert.Equal("It does not pay: with seals the cheapest that holds costs 5 crowns more over the years.", WayWords.DoesNotPay("seals", new(5, null, true), "crowns"));
        Assert.Equal("Seals: with or without?", WayWords.WithOrWithout("seals"));
        Assert.Equal("Without it nothing holds: at best 1 frost hour left in the worst winter.", WayWords.NothingHolds(WayWords.WithoutIt, 1, null));
        Assert.Equal("With it nothing holds: at best 2 frost hours left in the worst winter.", WayWords.NothingHolds(WayWords.WithIt, 2, null));
        Assert.Equal("Neither holds; with it 3 K·h of frost are left at best, without it 4.", WayWords.NeitherHolds(3.2, 4.4));
    }

    [Theory]
    [InlineData(400.9, false, "cheapest found that holds costs 400 to 680 crowns more over the years (by bounds that are tested)")]
    [InlineData(400.9, true, "cheapest that holds costs 400 to 680 crowns more over the years, 680 as long as no collector is built (by bounds that are tested)")]
    [InlineData(679.5, false, "cheapest that holds costs 680 crowns more over the years (by bounds that are tested)")]
    [InlineData(-3, false, "cheapest found that holds costs at most 680 crowns more over the years (searched, not proved)")]
    [InlineData(-3, true, "cheapest that holds costs 680 crowns more over the years as long as no collector is built (by bounds that are tested); whether one changes that was searched, not proved")]
    public void What_is_proved_and_what_was_found_make_an_interval(double least, bool withoutCollector, string told) =>
        Assert.Equal($"It does not pay: with seals the {told}.", WayWords.DoesNotPay("seals", new(680, (decimal)least, false, withoutCollector), "crowns"));

    [Fact]
    public void Of_what_was_not_found_it_is_said_what_it_costs_at_least()
    {
        Assert.Equal("Of \"fixed\" nothing was found that holds; what does costs at least 20 crowns more (by bounds that are tested).", WayWords.NoneOfIt("fixed", 120, 100, "crowns"));
        Assert.Equal("Of \"fixed\" nothing was found that holds; below 80 crowns nothing does (by bounds that are tested).", WayWords.NoneOfIt("fixed", 80, 100, "crowns"));
        Assert.Equal("Of \"fixed\" nothing holds (by bounds that are tested).", WayWords.NoneOfIt("fixed", null, 100, "crowns"));
        Assert.Equal("With it nothing holds (by bounds that are tested): at best 1 frost hour left in the worst winter.", WayWords.NothingHolds(WayWords.WithIt, 1, 7, null, 100, "crowns"));
        Assert.Equal("With it nothing was found that holds, of 7 layouts tried: at best 1 frost hour left in the worst winter. What does costs at least 20 crowns more over the years (by bounds that are tested).",
            WayWords.NothingHolds(WayWords.WithIt, 1, 7, 120, 100, "crowns"));
        Assert.Equal("With it nothing was found that holds, of 7 layouts tried: at best 1 frost hour left in the worst winter.", WayWords.NothingHolds(WayWords.WithIt, 1, 7, 90, 100, "crowns"));
        Assert.StartsWith("Without a collector no cheaper layout of your parts holds (by bounds that are tested, not by going through all); with one none below 1234 crowns does, so a better one could save 66 crowns at most. 1 group",
            CertificateWords.Half(false, 1234.9m, 1299.6m, "crowns", (7, 1, false)), StringComparison.Ordinal);
        Assert.StartsWith("With a collector nothing holds within your limits (by bounds that are tested, not by going through all); without one none below 1234 crowns does, and none was found. 1 group",
            CertificateWords.Half(true, 1234.9m, null, "crowns", (7, 1, false)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "A heater alone holds too, costs 0 less to build and 7 crowns more over the years.")]
    [InlineData(12, "A heater alone holds too, costs 12 less to build and 7 crowns more over the years.")]
    [InlineData(-12, "A heater alone holds too, costs 12 more to build and 7 crowns more over the years.")]
    public void A_heater_alone_costs_more_or_less_to_build(int less, string told) => Assert.Equal(told, WayWords.AloneCostsMore(less, 7, "crowns", true));

    [Fact]
    public void A_heater_alone_is_told_of()
    {
        Assert.Equal("A heater alone is the cheapest of all that hold.", WayWords.AloneIsCheapest(true));
        Assert.Equal("A heater alone is the cheapest of all found that hold (searched, not proved).", WayWords.AloneIsCheapest(false));
        Assert.Equal("The strongest heater allowed does not hold the limit alone: 1 frost hour left in the worst winter.", WayWords.AloneIsTooWeak(1, true));
        Assert.Equal(
            "The strongest heater allowed does not hold the limit alone: 2 frost hours left in the worst winter (searched, not proved).", WayWords.AloneIsTooWeak(2, false));
        Assert.Equal("A heater alone passes no check: why.", WayWords.AlonePassesNone("why", true));
        Assert.Equal("A heater alone passes no check: why (searched, not proved).", WayWords.AlonePassesNone("why", false));
        Assert.EndsWith("over the years (searched, not proved).", WayWords.AloneCostsMore(1, 7, "crowns", false), StringComparison.Ordinal);
    }

    [Fact]
    public void Turning_is_told_with_its_heat_and_its_parts()
    {
        Assert.Equal("4.0 m² turned (in steps) bring 114 kWh a winter into the tank, fixed 106", TurningWords.Gained(4, TurningKind.Stepped, 113.8, 106.4, null));
        Assert.Equal("4.0 m² turned (after the sun) bring 114 kWh a winter into the tank, fixed 106 (the turning one fails wind, so it is shown for its heat alone)", TurningWords.Gained(4, TurningKind.Continuous, 113.8, 106.4, "wind"));
        Assert.Equal("; even 6 times the area, fixed, does not protect as well, so there is no equal area.", TurningWords.NoEqualArea(6));
    }

    [Fact]
    public void Doubts_are_told_in_words()
    {
        Assert.Equal("It then costs 4300 to build, over the budget of 4200.", DoubtWords.OverBudget(4300.4m, 4200));
        Assert.Equal($"No. {One.Rank} of the ranking ({One.Title}) would then be cheaper: 80 against 90.", DoubtWords.AnotherIsCheaper(One, 80, 90));
        Assert.Equal("It then costs 90 over the years instead of 80.", DoubtWords.Costs(90, 80));
        Assert.Equal("It stays the cheapest of the ranking that holds, at 90 over the years.", DoubtWords.StaysCheapest(90));
        Assert.Equal("It still holds; electric heat takes 3 instead of 4 kWh.", DoubtWords.StillHolds(3.2, 4.1));
        Assert.Equal(["half the air leaks", "1.5 times the air leaks"], new[] { 0.5, 1.5 }.Select(DoubtWords.AirLeaks));
        Assert.Equal(["the clear sky is 5 K colder", "the clear sky is 5 K warmer", "the clear sky is 0 K colder"], new[] { 5.0, -5, 0 }.Select(DoubtWords.ColderSky));
        Assert.Equal("the cover loses 25 % more", DoubtWords.CoverLoses(1.25));
    }

    [Fact]
    public void Unseen_winters_are_told_in_words()
    {
        Assert.Equal("9.9 K·h of frost", UnseenWords.Frost(9.94));
        Assert.Equal("10 K·h of frost", UnseenWords.Frost(10));
        Assert.Equal("3 kWh of stand-by heat (1 crowns)", UnseenWords.Standby(3.1, 1.3, "crowns"));
        Assert.Equal("It held in 19 of 20 winters it was not chosen on: in the long run between 1 and 24 winters in 100 would go below the limit (right 19 times in 20).", UnseenWords.Held(19, 20, 0.764, 0.991));
        Assert.StartsWith("Unseen winters: 20 made from the monthly means with seeds that the search never saw, the lowest", UnseenWords.MadeFromMonths(20), StringComparison.Ordinal);
        Assert.StartsWith("Unseen winters: 20 drawn from the weather file, whole spells in a new order", UnseenWords.DrawnFromRecord(20), StringComparison.Ordinal);
        Assert.StartsWith("Expect about a and b a winter more than the figures of this layout say:", UnseenWords.Flattered(["a", "b"]), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_proved_is_said_with_its_figures()
    {
        const string Groups = "1 group of layouts were looked at, 7 of them simulated by plants that no layout of the group can beat.";
        Assert.Equal("No layout of your parts that holds costs less than 1234 crowns over the years (by bounds that are tested); 1300 crowns was found, so a better one could save 66 crowns at most. " + Groups,
            CertificateWords.Below(1234.9m, 1299.6m, "crowns", (7, 1, false)));
        Assert.Equal("No layout of your parts that holds costs less than 1234 crowns over the years (by bounds that are tested); none was found. " + Groups + " The proof was stopped early.",
            CertificateWords.Below(1234.9m, null, "crowns", (7, 1, true)));
        Assert.Equal("No layout of your parts holds within your limits (proved). Every layout was gone through.", CertificateWords.Exact(false));
        Assert.StartsWith("No layout of your parts holds within your limits (by bounds that are tested, not by going through all). 1 group", CertificateWords.Proved(false, 7, 1), StringComparison.Ordinal);
        Assert.Equal("The catalogue has no 'x'.", TitleWords.NoSuchPart("x"));
        Assert.Equal(("t", "t; with a"), (TitleWords.Full("t", ""), TitleWords.Full("t", "a")));
    }

    [Fact]
    public void A_bare_house_that_holds_needs_nothing_and_an_empty_ranking_says_why()
    {
        var bare = shorter.Weighed.Judgement.BareHouse;
        string Answer(JudgedLayout house, params JudgedLayout[] ranking) => AnswerWords.Answer(Scenario, house, ranking, new Picks(null, null, null, null), isExact: true);
        Assert.Equal("Add nothing: the bare house holds 2 °C in every winter it was tried on.", Answer(bare with { Holds = true }));
        Assert.Equal("Nothing can be added within 4200 crowns: what is left is the bare house, which has 1 frost hour in the worst winter.", Answer(bare with { Holds = false, WorstFrostHours = 1 }));
        Assert.Equal("Nothing that passes every check was found within 4200 crowns.", Answer(bare with { Holds = false }, One));
        Assert.Equal(["Nothing else was to be tried: raise the budget, or allow more kinds of parts."], AnswerWords.NearestMiss(Scenario, [], new Picks(null, null, null, null)));
        Assert.Equal(["Every layout tried fails a check: raise the budget, or allow more kinds of parts."], AnswerWords.NearestMiss(Scenario, [One], new Picks(null, null, null, null)));
    }

    // Worth its money only where the failures are half as many at most, and fewer at all.
    [Theory]
    [InlineData(36, 38, true)]
    [InlineData(36, 37, false)]
    [InlineData(40, 40, false)]
    [InlineData(39, 40, true)]
    public void Surer_is_told_where_it_fails_half_as_often(int first, int surer, bool isTold)
    {
        var (one, other) = (One with { Rank = 1, LifeCost = 100, Chance = Chance.Counted(first, 40) }, One with { Rank = 2, Title = "more", Apart = "", LifeCost = 150, Chance = Chance.Counted(surer, 40) });
        var layout = One.ToLayout(Scenario);
        var found = new SureFound(layout, false, layout, layout, new Dictionary<Design.Choices.Layout, Chance>(), []);
        var said = SureWords.Of(found, [one, other], new Picks(1, 1, 1, 1), other, Scenario with { Search = Scenario.Search with { Certainty = 0.9 } });
        Assert.Equal("Nothing was found that is as sure as 90 in 100; this is the surest that was found.", said[0]);
        Assert.Equal(isTold, said.Contains(FormattableString.Invariant($"Surer costs more: no. 2 (more) costs 50 crowns more over the years and held in {surer} of 40.")));
        Assert.Equal(isTold ? 3 : 2, said.Count);
    }

    // Sixty rows at most: 100, then a round multiple.
    [Theory]
    [InlineData(6000, 100)]
    [InlineData(6001, 200)]
    [InlineData(12000, 200)]
    [InlineData(12001, 500)]
    [InlineData(30001, 1000)]
    [InlineData(60001, 2000)]
    [InlineData(120001, 5000)]
    [InlineData(300001, 10000)]
    public void A_list_of_purchases_climbs_in_sixty_steps_at_most(int budget, int step) => Assert.Equal(step, PurchaseList.Step(budget));
}
