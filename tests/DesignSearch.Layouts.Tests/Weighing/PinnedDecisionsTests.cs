using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Certify;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Search;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>
/// What is judged, weighed, proved and held for sure in three weeks of sines, sample by sample, as it was when it was last looked at. Where the season or a price moves all
/// moves; where a sentence moves, that alone: read what the test wrote, and put it in.
/// </summary>
public sealed class PinnedDecisionsTests
{

    private static readonly Dictionary<string, (string, string)[]> Samples = new(StringComparer.Ordinal)
    {
        ["usual"] = [("budget = 4200", "budget = 5500")],
        ["poor"] = [("budget = 4200", "budget = 700")],
        ["penniless"] = [("budget = 4200", "budget = 0")],
        ["narrow"] = [("store_floor_m2 = 3.0", "store_floor_m2 = 0.9"), ("mains_at_greenhouse = false", "mains_at_greenhouse = true"), ("frost_limit_c = 2.0", "frost_limit_c = -9.9")],
        ["fixed"] = [("mount = [\"stand-timber\", \"two-position-rocker\"]", "mount = \"stand-timber\""), ("collector_count = 2", "collector_count = [1, 2]")],
        ["at rates"] = [("interest = 0.03", "interest = 0.03\nlabour_rate_per_hour = 17.35\nlicensed_rate_per_hour = 61.45\nbuild_hours = 45\nnight_tariff_per_kwh = 0.21\nnight_from_hour = 22\nnight_to_hour = 6")],
        ["with a bench"] = [("frost_limit_c = 2.0", "frost_limit_c = 2.0\nbench_enough_m2 = 2.4"), ("heat_pump = \"none\"  ", "bench = [\"none\", \"bench-fleece\", \"bench-mat-120\"]\nheat_pump = [\"none\", \"hp-inverter\"] ")],
    };

    private static readonly string[] Weighed =
    [
        "at rates better 01ba4719", "at rates checks that cost 37517e5f", "at rates from a seventh c41913d0", "at rates judged ff258d0d", "at rates miss b65c209d",
        "at rates picks ead0e3f6", "at rates proved 206c4f29", "at rates purchases 2c10a21e", "at rates stages 66253274", "at rates turning 3d636ea9",
        "at rates ways ea74925a", "fixed better abd9205b", "fixed checks that cost 37517e5f", "fixed from a seventh 894bd2ab", "fixed judged 9d6aa889",
        "fixed miss 61d1954b", "fixed picks 814a821c", "fixed proved 8d586aa0", "fixed purchases d630bfaa", "fixed stages afaaf1bb", "fixed turning eec46d62",
        "fixed ways 8f6ae103", "narrow better 01ba4719", "narrow checks that cost 37517e5f", "narrow from a seventh 96c97af9", "narrow judged 22d89d66",
        "narrow miss 61d1954b", "narrow picks a58844e4", "narrow proved 4b8c98bc", "narrow purchases a8fe7436", "narrow stages 1276a7e7", "narrow turning 3d636ea9",
        "narrow ways cd975543", "penniless better 01ba4719", "penniless checks that cost 37517e5f", "penniless from a seventh ccd6b9df", "penniless judged be14d54f",
        "penniless miss 61d1954b", "penniless picks 37517e5f", "penniless proved 5db7b720", "penniless purchases 45d9a2e6", "penniless stages 37517e5f",
        "penniless turning 3d636ea9", "penniless ways c54d8aa6", "poor better 01ba4719", "poor checks that cost 37517e5f", "poor from a seventh 1127aebf",
        "poor judged 5af3751c", "poor miss cd1fb256", "poor picks 2ec54687", "poor proved 2eba5cbd", "poor purchases 609c97d9", "poor stages 91593c2e",
        "poor turning 3d636ea9", "poor ways 04953a44", "unseen a7d2e531", "usual better 4711696f", "usual checks that cost 37517e5f",
        "usual from a seventh 593b1aef", "usual judged a302824d", "usual miss 61d1954b", "usual picks ba517a0b", "usual proved 8d586aa0", "usual purchases d630bfaa",
        "usual stages afaaf1bb", "usual turning 3f3a2383", "usual ways 267270b6", "with a bench better 01ba4719", "with a bench checks that cost 37517e5f",
        "with a bench from a seventh 97a8a0ff", "with a bench judged c5d7bdfc", "with a bench miss 61d1954b", "with a bench picks 08ea5d53",
        "with a bench proved 62cb5182", "with a bench purchases 1c4fa7f2", "with a bench stages 23cc2e49", "with a bench turning 3d636ea9",
        "with a bench ways 3533a82a",
    ];

    private static readonly string[] Sure =
    [
        "chances 7020e353", "found b0bdf735", "said a1a5980a",
    ];

    [SkippableFact]
    public void Pinned_what_is_weighed_and_proved()
    {
        Pins.OnlyHere();
        var pins = new Pins();
        foreach (var (name, changes) in Samples)
        {
            using var sample = Sample(changes);
            pins.Tell(name + " judged", Spelt.Of(sample.Judgement));
            Tell(pins, name, sample.Weighing);
            List<(double[] Point, Evaluation Evaluation)> some = [.. sample.Tried.Where((_, i) => i % 7 == 3)];
            pins.Tell(name + " from a seventh", Spelt.Of(sample.Weigh(some, isExact: false, threads: 2)));
            pins.Tell(name + " better", string.Join('\n', new Weigher(sample.Assessor, 2, 1).Better(sample.Judgement, some, sample.Space, isExact: false).Select(Text)));
            if (name == "usual")
            {
                IReadOnlyList<Trial> trials = new TrialBook(sample.Assessor, 2).Of([.. sample.Judgement.Ranking.Select(l => l.ToLayout(sample.Scenario))]);
                pins.Tell("unseen", Spelt.Of(UnseenJudging.Of(sample.Scenario, trials, sample.Assessor.Winters, FormulaWinters.Drawn(sample.Scenario, 8))));
            }

            var cheapest = sample.Judgement.Picks.CheapestThatHolds is { } rank ? sample.Judgement.Ranking[rank - 1].LifeCost : (decimal?)null;
            var (certificate, better, _) = new Certifier(sample.Assessor, 2).Of(cheapest + 100, [], sample.Tried, null, CancellationToken.None);
            pins.Tell(name + " proved", Spelt.Of(certificate) + (better is null ? "" : Text(better)) + Spelt.Of(Certifier.Exact(cheapest)));
        }

        pins.Compare(Weighed);
    }

    [SkippableFact]
    public void Pinned_what_is_held_for_sure()
    {
        Pins.OnlyHere();
        var pins = new Pins();
        using var sample = Sample([("budget = 4200", "budget = 5500"), ("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-1500\", \"fan-heater-2kw\"]")]);
        var holders = sample.Tried.Where(t => t.Evaluation.TotalViolation == 0 && t.Evaluation.Objectives[1] == 0).OrderBy(t => t.Evaluation.Objectives[0]).Select(t => sample.Space.At(t.Point)).ToList();
        foreach (var (isExact, certainty) in new[] { (true, 0.9), (false, 0.5) })
        {
            var scenario = sample.Scenario with { Search = sample.Scenario.Search with { Certainty = certainty, UnseenWinters = 12 } };
            var assessor = new LayoutAssessor(scenario, sample.Assessor.Winters);
            var found = new SurePicking(new TrialBook(assessor, 2), 2, FormulaWinters.Drawn(scenario, 12)).Of(holders, isExact);
            pins.Tell("found", $"{Text(found.First)}; {(found.Surer is { } surer ? Text(surer) : "-")}; {Text(found.MostProtection)}; {found.IsSure}");
            pins.Tell("chances", Spelt.Of(found.Chances.OrderBy(c => Text(c.Key), StringComparer.Ordinal).Select(c => (object)new { Key = Text(c.Key), c.Value })));
            var judged = new Judge(assessor).Of(sample.Result, sample.Space, [], [], found);
            pins.Tell("said", judged.Answer + judged.Remark + Spelt.Of(judged.Sureness) + Spelt.Of(judged.Drawn) + Spelt.Of(judged.Picks));
        }

        pins.Compare(Sure);
    }

    private static WeighedSample Sample((string, string)[] changes) => new((Scenario read) => read, FormulaWinters.Of, [.. WeighedSample.Short, ("barrel_count = [2, 4, 6]", "barrel_count = 4"), .. changes]);

    private static string Text(Layout layout) => string.Join(' ', layout.Awake.Select(a => $"{a.Choice.Key}={a.Value}"));

    private static void Tell(Pins pins, string name, Weighing weighing)
    {
        pins.Tell(name + " picks", Spelt.Of(weighing.Picks));
        pins.Tell(name + " ways", Spelt.Of(weighing.Comparisons) + Spelt.Of(weighing.HeaterAlone));
        pins.Tell(name + " turning", Spelt.Of(weighing.Turning));
        pins.Tell(name + " purchases", Spelt.Of(weighing.Purchases) + Spelt.Of(weighing.PurchaseStep));
        pins.Tell(name + " stages", Spelt.Of(weighing.Stages));
        pins.Tell(name + " checks that cost", Spelt.Of(weighing.CheckCosts));
        pins.Tell(name + " miss", Spelt.Of(weighing.Miss));
    }
}
