using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Reporting.Page;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed partial class ReportPageTests
{
    private static readonly string Page = ReportPage.Of(InventedRun.Finished(), Assert.Fail);

    [Fact]
    public void What_to_add_is_the_heading_of_the_page()
    {
        var run = InventedRun.Finished();
        var first = run.Judgement.Ranking[run.Judgement.Picks.First!.Value - 1];
        string Head(StoredRun shown) => Unset(WebUtility.HtmlDecode(Heading().Match(ReportPage.Of(shown, Assert.Fail)).Groups[1].Value));
        Assert.Equal(Unset($"To keep 2 °C, add {first.Title}."), Head(run));
        // Taken in at a glance, however much is added: then the layout stands below.
        var long20 = string.Join(' ', Enumerable.Repeat("part", 20));
        var longer = run with { Judgement = run.Judgement with { Ranking = [.. run.Judgement.Ranking.Select(l => l.Rank == first.Rank ? l with { Title = long20 } : l)] } };
        Assert.Equal(Unset($"To keep 2 °C, add this for {Say.Money(first.BuildPrice, "crowns")}:"), Head(longer));
        Assert.Contains(Say.Capital(long20) + ".", TextOf(ReportPage.Of(longer, Assert.Fail)), StringComparison.Ordinal);
        // Where nothing is to be added, or nothing holds, the answer itself is the heading.
        var nothing = run with { Judgement = run.Judgement with { AnythingHolds = false } };
        Assert.Equal(Unset(run.Judgement.Answer), Head(nothing));
    }

    [Fact]
    public void The_first_screen_says_what_it_costs_how_sure_it_is_and_what_can_hurt_most()
    {
        var run = InventedRun.Finished();
        var at = run.Judgement.Picks.First!.Value - 1;
        var first = run.Judgement.Ranking[at] with
        {
            Chance = new(57, 60, 0.86, 0.98),
            Cautions = [new("Moving cover", "It pinches."), new("Mains voltage", "It kills.") { Harm = Harm.Kills }, new("Damp", "It moulds.") { Harm = Harm.Spoils }],
        };
        run = run with { Judgement = run.Judgement with { Ranking = [.. run.Judgement.Ranking.Select((l, i) => i == at ? first : l)], Sureness = ["It is sure enough."] } };
        var text = Unset(TextOf(ReportPage.Of(run, Assert.Fail)));
        Assert.Contains(Unset($"{Say.Money(first.BuildPrice, "crowns")} to build, of your {Say.Money(run.Scenario.Budget, "crowns")}."), text, StringComparison.Ordinal);
        Assert.Contains(Unset($"{Say.Money(first.LifeCost, "crowns")} over 15 years"), text, StringComparison.Ordinal);
        Assert.Contains("It held in 57 of 60 other winters", text, StringComparison.Ordinal);
        Assert.Contains("It is sure enough.", text, StringComparison.Ordinal);
        Assert.Contains("What can hurt most: mains voltage", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_hold_is_a_first_step_and_no_pick()
    {
        var run = InventedRun.Finished();
        var step = run.Judgement.Ranking[run.Judgement.Picks.BestValue!.Value - 1];
        Assert.False(step.Holds);
        Assert.DoesNotContain(PickNames.Of(run.Judgement), p => p.Layout.Rank == step.Rank);
        Assert.Contains("A first step, if the money is not there yet: " + step.FullTitle, Unset(TextOf(Page)), StringComparison.Ordinal);
        // Where nothing holds it is the best there is for the money.
        Assert.Contains(PickNames.Of(run.Judgement with { AnythingHolds = false }), p => p.Layout.Rank == step.Rank);
    }

    [Fact]
    public void A_first_step_whose_water_would_freeze_says_so_beside_it()
    {
        var run = InventedRun.Finished();
        var step = PickNames.FirstStep(run.Judgement)!;
        step = step with { Winters = [.. step.Winters.Select(w => w with { Outcome = w.Outcome with { LowestHouseAirC = -5 } })] };
        var frozen = new Caution("Ice", "It bursts.") { ComesTrueBelowC = -4 };
        string Told(Caution caution) => TextOf(ReportPage.Of(run with
        {
            Judgement = run.Judgement with { Ranking = [.. run.Judgement.Ranking.Select(l => l.Rank == step.Rank ? step with { Cautions = [caution] } : l)] },
        }, Assert.Fail));
        Assert.Contains("at the lowest. Take care, in that cold: It bursts.", Told(frozen), StringComparison.Ordinal);
        Assert.DoesNotContain("in that cold", Told(frozen with { ComesTrueBelowC = -6 }), StringComparison.Ordinal);
    }

    [Fact]
    public void It_asks_no_host_for_anything()
    {
        Assert.DoesNotContain("http:", Page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("https:", Page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("//", Script().Replace(Style().Replace(Page, ""), ""), StringComparison.Ordinal);
        Assert.All(Links().Matches(Page), m => Assert.Matches("^(#|data:,$|lists/|ranking.csv|front.csv|pareto.|figures.html)", m.Groups[1].Value));
    }

    [Fact]
    public void Every_element_that_opens_closes_in_order() => AssertBalanced(Page);

    [Fact]
    public void Every_identifier_is_there_once_and_every_link_inside_the_page_finds_one()
    {
        var ids = Ids().Matches(Page).Select(m => m.Groups[1].Value).ToList();
        Assert.Equal(ids.Distinct().Count(), ids.Count);
        Assert.All(Links().Matches(Page).Select(m => m.Groups[1].Value).Where(h => h.StartsWith('#')), h => Assert.Contains(h[1..], ids));
    }

    [Fact]
    public void The_first_pick_is_told_in_full()
    {
        var run = InventedRun.Finished();
        var text = TextOf(Page);
        var first = run.Judgement.Ranking[run.Judgement.Picks.CheapestThatHolds!.Value - 1];
        Assert.All(first.Bill, l => Assert.Contains(l.Name, text, StringComparison.Ordinal));
        Assert.All(first.Bill, l => Assert.Contains(l.Why, text, StringComparison.Ordinal));
        Assert.All(first.Cautions, c => Assert.Contains(c.Text, text, StringComparison.Ordinal));
        Assert.All(first.Settings, s => Assert.Contains(s.Reason, text, StringComparison.Ordinal));
        Assert.All(first.Checks, c => Assert.Contains(c.Sentence, text, StringComparison.Ordinal));
        Assert.Contains(Unset(Say.Cents(first.BuildPrice)), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Doubts_assumptions_hashes_seed_and_the_scenarios_own_words_are_told()
    {
        var run = InventedRun.Finished();
        var text = TextOf(Page);
        var figures = TextOf(FiguresPage.Of(run));
        Assert.All(run.Inputs, i => Assert.Contains(i.Sha256, figures, StringComparison.Ordinal));
        foreach (var words in run.Judgement.Doubts.Append(run.Scenario.Description).Append(run.Scenario.WeatherSource).Append("This is a planning aid."))
            Assert.Contains(words, text, StringComparison.Ordinal);
        Assert.Contains("2 of 3 figures of the model were left as assumed", text, StringComparison.Ordinal);
        Assert.Equal(2, Regex.Count(figures, "assumed common|assumed from memory"));
    }

    [Fact]
    public void What_if_it_gets_worse_is_told_in_figures_of_its_table()
    {
        var run = InventedRun.Finished();
        var first = run.Weighing.Picks[0];
        string Told(params WhatIf[] whatIfs) =>
            TextOf(ReportPage.Of(run with { Weighing = run.Weighing with { Picks = [first with { WhatIfs = whatIfs }, .. run.Weighing.Picks.Skip(1)] } }, Assert.Fail));
        WhatIf At(double outside, double inside, int frost) => new($"down to {outside}", outside, inside, frost, Mishap.None);
        var cut = new WhatIf("the mains fail", -18, -4.6, 8, Mishap.PowerCut);
        Assert.Contains("down to −18.0 °C outside it keeps 2 °C; colder was not tried.", Told(At(-18, 3, 0)), StringComparison.Ordinal);
        Assert.Contains("down to −20.0 °C outside it keeps 2 °C; at −22.0 °C outside it would be 0.5 °C. If the mains fail, it falls: −4.5 °C at the lowest.",
            Told(At(-18, 3, 0), At(-20, 2.1, 0), At(-22, 0.6, 7), cut), StringComparison.Ordinal);
        Assert.Contains("at −18.0 °C outside it is 1.0 °C, below the limit already.", Told(At(-18, 1, 3), At(-20, -1, 9)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_coldest_hour_of_a_winter_is_dated()
    {
        // 2 October 2001, 00:00 and 2646 hours: 110 days and 6 hours later.
        Assert.Contains("20 January, 06:00 to 07:00", TextOf(Page), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_only_a_bench_is_held_no_figure_speaks_of_the_house()
    {
        var run = InventedRun.Finished();
        const string fleece = "under the fleece";
        var place = new PlantPlace("bench", fleece, "or a bench under fleece in it", "Only the bench is held: the house falls to");
        Assert.DoesNotContain(fleece, TextOf(Page), StringComparison.Ordinal);
        var ranking = run.Judgement.Ranking.Select(l => l with { Plants = place }).ToList();
        var weighed = run.Weighing.Picks.Select(p => p with { Week = p.Week with { Plants = place } }).ToList();
        var page = ReportPage.Of(run with { Judgement = run.Judgement with { Ranking = ranking }, Weighing = run.Weighing with { Picks = weighed } }, Assert.Fail);
        var text = TextOf(page);
        Assert.Contains("It, or a bench under fleece in it, must stay above", text, StringComparison.Ordinal);
        Assert.Contains("are those under the fleece.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("°C inside", text, StringComparison.Ordinal);
        Assert.Contains("most protection: lowest under the fleece", text, StringComparison.Ordinal);
        Assert.Matches("(?s)The biggest doubts.*°C under the fleece ", text);
        Assert.Matches("°C under the fleece at .* outside", text);
        Assert.Equal(Regex.Count(TextOf(Page), "Holds the limit in every winter"), Regex.Count(text, "Holds the limit under the fleece in every winter"));
    }

    [Fact]
    public void The_front_says_what_a_little_more_money_would_take_away()
    {
        // The dearest of the front costs 4873, so a little more is 200; from the bare house that reaches the barrels at 103.50, with 1878 K·h instead of 2310.
        var page = FiguresPage.Of(InventedRun.Finished());
        Assert.Contains("less frost for 200 crowns more [K·h]", page.Replace("\u202F", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("data-key=\"2310\" >2\u202F300</td><td class=\"n\"  data-key=\"432\" >430</td>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_layout_picked_twice_has_one_card_that_says_so()
    {
        var run = InventedRun.Finished();
        Assert.Equal(run.Judgement.Picks.CheapestThatHolds, run.Judgement.Picks.MostProtection);
        Assert.Single(Regex.Matches(Page, "<article "));
        Assert.Contains("<h3>Cheapest that holds and most protection</h3>", Page, StringComparison.Ordinal);
    }

    [Fact]
    public void Picks_that_share_a_title_are_told_apart_on_their_cards()
    {
        var run = InventedRun.Finished();
        run = run with { Judgement = run.Judgement with { AnythingHolds = false } };
        var picked = PickNames.Of(run.Judgement).Select(p => p.Layout.Rank).ToArray();
        Assert.True(picked.Length > 1);
        var alike = run.Judgement.Ranking.Select(l => l.Rank == picked[1] ? l with { Title = run.Judgement.Ranking[picked[0] - 1].Title, Apart = "the stronger pump" } : l).ToList();
        Assert.Contains("; with the stronger pump", Cards(run with { Judgement = run.Judgement with { Ranking = alike } }), StringComparison.Ordinal);
        var apart = run.Judgement.Ranking.Select(l => l.Rank == picked[1] ? l with { Apart = "the stronger pump" } : l).ToList();
        Assert.DoesNotContain("; with the stronger pump", Cards(run with { Judgement = run.Judgement with { Ranking = apart } }), StringComparison.Ordinal);

        static string Cards(StoredRun run) => PicksSection.Of(run).ToString();
    }

    [Theory]
    [InlineData(1e17)]
    [InlineData(1e300)]
    [InlineData(-1e17)]
    public void A_week_of_absurd_figures_has_a_chart_with_few_lines(double absurd)
    {
        var week = InventedRun.Finished().Weighing.Picks.Select(p => p.Week).First(w => w is not null)!;
        var spoilt = week with { Hours = [.. week.Hours.Select(h => h with { AirC = absurd, OutsideC = absurd, BareAirC = absurd, TankC = absurd })] };
        Assert.InRange(Regex.Count(WeekChart.Of(spoilt, absurd, 700, "w", "f").ToString(), "class=\"grid\""), 3, 40);
    }

    [Theory]
    [InlineData(0, "evaluations", "; its second half found none cheaper that holds, which is no proof that there is none.")]
    [InlineData(50, "evaluations", "; all after half time took 50 crowns off the cheapest that holds, so a slightly better one may exist.")]
    [InlineData(900, "evaluations", "; all after half time took 900 crowns off the cheapest that holds. Search longer before you buy, with --evaluations 12000.")]
    [InlineData(null, "evaluations", "; by half time it had found none that holds. Search longer before you buy, with --evaluations 12000.")]
    [InlineData(null, "stopped", "; by half time it had found none that holds. Search longer before you buy.")]
    public void What_the_second_half_of_the_search_saved_stands_in_the_head(int? saved, string stopped, string words)
    {
        var run = InventedRun.Finished();
        var cheapest = run.Judgement.Ranking[run.Judgement.Picks.CheapestThatHolds!.Value - 1].LifeCost;
        var search = run.Search with { Evaluations = 6000, SpaceSize = 4.2e7, IsExact = false, StoppedBecause = stopped, CheapestHalfWay = cheapest + saved };
        Assert.Contains(words, TextOf(ReportPage.Of(run with { Search = search }, Assert.Fail)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_that_found_nothing_that_holds_says_that_a_better_one_may_exist()
    {
        var run = InventedRun.NothingHolds();
        var search = run.Search with { Evaluations = 6000, SpaceSize = 4.2e7, IsExact = false };
        Assert.Contains("possible layouts, so a slightly better one may exist.", TextOf(ReportPage.Of(run with { Search = search }, Assert.Fail)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_stopped_by_hand_says_so_first_and_a_miss_tells_how_near_it_came()
    {
        var run = InventedRun.NothingHolds();
        var text = TextOf(ReportPage.Of(run, Assert.Fail));
        Assert.True(text.IndexOf("Stopped early.", StringComparison.Ordinal) is > 0 and var banner && banner < text.IndexOf(run.Judgement.Answer, StringComparison.Ordinal));
        Assert.Contains($"so far, from {run.Search.Evaluations} layouts; a longer search may find better.", text, StringComparison.Ordinal);
        Assert.Contains(run.Judgement.NearestMiss[1], text, StringComparison.Ordinal);
        Assert.DoesNotContain("Stopped early.", TextOf(Page), StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_text_is_text()
    {
        var page = ReportPage.Of(HostileRun.Make(), Assert.Fail);
        AssertBalanced(page);
        Assert.Equal(1, Regex.Count(page, "<script"));
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.DoesNotContain('\0', page);
        Assert.DoesNotContain('\u202E', page);
        Assert.Contains("<script>alert(1)</script>", TextOf(page), StringComparison.Ordinal);
        Assert.True(Encoding.UTF8.GetByteCount(page) < 1_000_000);
    }

    [Fact]
    public void However_long_the_front_the_page_stays_under_a_megabyte()
    {
        var some = InventedLayouts.All().Where(l => l.PassesChecks && l.Bill.Count > 0).ToList();
        var many = Enumerable.Range(0, 400).Select(i => some[i % some.Count] with
        {
            Slug = $"layout-{i}",
            LifeCost = 100 + i,
            FrostDegreeHoursKh = 2000 - (4 * i),
            Bill = [.. Enumerable.Range(0, 60).Select(line => some[i % some.Count].Bill[0] with { Name = $"Part {line} " + new string('n', 120), Total = 1 })],
            BuildPrice = 60,
        });
        var run = InventedRun.Of(many);
        Assert.True(run.Judgement.Front.Count > 390);
        var page = ReportPage.Of(run, Assert.Fail);
        Assert.True(Encoding.UTF8.GetByteCount(page) < 1_000_000);
        Assert.Contains("layout-1\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_without_ranked_layouts_has_a_page()
    {
        var page = ReportPage.Of(InventedRun.Of([]), Assert.Fail);
        AssertBalanced(page);
        Assert.Contains("Nothing to pick", page, StringComparison.Ordinal);
        Assert.DoesNotContain("id=\"shopping\"", page, StringComparison.Ordinal);
    }

    private static void AssertBalanced(string page)
    {
        var open = new Stack<string>();
        foreach (Match tag in Tag().Matches(Script().Replace(Style().Replace(page, ""), "")))
        {
            var name = tag.Groups["name"].Value;
            if (tag.Groups["close"].Success)
                Assert.Equal(open.Pop(), name);
            else if (!tag.Groups["self"].Success && name is not ("meta" or "link" or "input" or "br"))
                open.Push(name);
        }

        Assert.Empty(open);
    }

    private static string TextOf(string page) =>
        Unset(Spaces().Replace(WebUtility.HtmlDecode(AnyTag().Replace(Script().Replace(Style().Replace(page, ""), ""), " ")), " "));

    // Without the gaps that only set figures apart or hold them to their unit.
    private static string Unset(string text) => text.Replace('\u00A0', ' ').Replace("\u202F", "", StringComparison.Ordinal);

    [GeneratedRegex("<h1>(.*?)</h1>", RegexOptions.Singleline)]
    private static partial Regex Heading();

    [GeneratedRegex("<style>.*?</style>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex("<script>.*?</script>", RegexOptions.Singleline)]
    private static partial Regex Script();

    [GeneratedRegex("href=\"(.*?)\"")]
    private static partial Regex Links();

    [GeneratedRegex(" id=\"(.*?)\"")]
    private static partial Regex Ids();

    [GeneratedRegex("<(?<close>/)?(?<name>[a-z][a-z0-9]*)(?:\\s+[a-zA-Z-]+(?:=\"[^\"<>]*\")?)*\\s*(?<self>/)?>")]
    private static partial Regex Tag();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex AnyTag();

    [GeneratedRegex(" +")]
    private static partial Regex Spaces();
}
