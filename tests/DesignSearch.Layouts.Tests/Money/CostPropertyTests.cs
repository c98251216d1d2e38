using CsCheck;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Search.Engine;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What must hold for every layout of a wide scenario, tried on layouts drawn by chance.</summary>
public sealed class CostPropertyTests
{
    private const int Draws = 300;

    private static readonly Scenario Wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));

    // Without packs, and with prices in tenths: amounts are in tenths too, so that nothing is rounded to the cent.
    private static readonly Scenario ByAmount = Wide with { Catalogue = Catalogue.Of(Wide.Catalogue.All.Select(p => At((Part)p, p.Price))) };

    private static readonly Gen<ChoiceValue[]> Values = Gen.Int[0, int.MaxValue - 1].Array[SystemList.All.Choices.All.Count].Select(draw => draw.Select((d, i) => Wide.Choices[i].Levels[d % Wide.Choices[i].Levels.Count]).ToArray());

    // Each part is the cheapest that serves, and may draw more current than the one it displaces: then the supply may cost more than was saved.
    // By any amount: where coils come whole, a dearer cable whose coil is begun anyway may cost less than the cheapest by the metre.
    [Fact]
    public void A_cheaper_part_never_makes_a_layout_dearer() =>
        Gen.Select(Values, Gen.Int[0, int.MaxValue - 1], Gen.Int[0, 99]).Sample((values, which, percent) =>
        {
            var part = (Part)ByAmount.Catalogue.All[which % ByAmount.Catalogue.All.Count];
            var cheaper = At(part, part.Price * percent / 100);
            var with = ByAmount with { Catalogue = Catalogue.Of(ByAmount.Catalogue.All.Select(p => p.Id == part.Id ? cheaper : p)) };
            return Price(with, values) <= Price(ByAmount, values) || Price(with, values, IsNotElectric) <= Price(ByAmount, values, IsNotElectric);
        }, iter: Draws);

    [Fact]
    public void Owning_a_part_never_makes_a_layout_dearer() =>
        Gen.Select(Values, Gen.Int[0, int.MaxValue - 1], Gen.Int[0, 400]).Sample((values, which, tenths) =>
        {
            var some = Stock.Of((Wide.Catalogue.All[which % Wide.Catalogue.All.Count].Id, tenths / 20m));
            var more = Stock.Of((Wide.Catalogue.All[which % Wide.Catalogue.All.Count].Id, tenths / 10m));
            return Price(Wide with { Stock = more }, values) <= Price(Wide with { Stock = some }, values) && Price(Wide with { Stock = some }, values) <= Price(Wide, values);
        }, iter: Draws);

    [Fact]
    public void A_sleeping_choice_changes_nothing() =>
        Gen.Select(Values, Values).Sample((values, others) =>
        {
            var layout = Layout.Of(values, Wide.Systems.Choices);
            var awake = layout.Awake.Select(a => a.Choice.Key).ToHashSet();
            var twin = Layout.Of([.. values.Select((v, i) => awake.Contains(SystemList.All.Choices.All[i].Key) ? v : others[i])], Wide.Systems.Choices);
            return LayoutFile.Write(twin, "") == LayoutFile.Write(layout, "") && twin.Equals(layout)
                && LayoutBuilder.Build(Wide, twin).Parts.SequenceEqual(LayoutBuilder.Build(Wide, layout).Parts)
                && LayoutBuilder.Build(Wide, twin).Installation == LayoutBuilder.Build(Wide, layout).Installation;
        }, iter: Draws);

    [Fact]
    public void The_search_counts_what_the_bill_adds_up_to() =>
        Gen.Select(Values, Gen.Int[0, int.MaxValue - 1], Gen.Int[0, 400], Gen.Int[0, 3]).Sample((values, which, tenths, level) =>
        {
            var built = LayoutBuilder.Build(Wide, Layout.Of(values, Wide.Systems.Choices));
            // Something that the layout needs is owned, perhaps in part.
            var stock = built.Parts.Count == 0 ? Stock.Empty : Stock.Of((built.Parts[which % built.Parts.Count].Part.Id, tenths / 20m));
            var bill = Pricer.Bill(built.Parts, stock, (PriceLevel)level);
            return Pricing.Total(bill) == Pricer.BuildPrice(built.Parts, stock, (PriceLevel)level);
        }, iter: Draws);

    [Fact]
    public void A_larger_budget_never_protects_worse()
    {
        using var small = new SmallScenario(
            ("start = \"11-01\"\nend = \"03-31\"", "start = \"01-05\"\nend = \"01-18\"\nwarm_up_days = 2"),
            ("\n[[winters]]\nname = \"hard\"\nkind = \"hard\"\nweight = 0.1\nreturn_years = 10\n", ""));
        var scenario = small.Read();
        var winters = WinterSet.Make(scenario);
        double? Best(int budget)
        {
            var at = scenario with { Money = scenario.Money with { Budget = budget } };
            var result = new SearchEngine(new LayoutProblem(new LayoutAssessor(at, winters)), new SearchSettings { MaxEvaluations = 5000, EnumerateUpTo = 5000, Threads = 2 }).Run();
            Assert.True(result.IsExact);
            return result.Front.Where(p => p.Evaluation.TotalViolation == 0).Select(p => (double?)p.Evaluation.Objectives[1]).Min();
        }

        Gen.Select(Gen.Int[0, 4200], Gen.Int[0, 4200]).Sample((a, b) => (Best(Math.Max(a, b)) ?? double.PositiveInfinity) <= (Best(Math.Min(a, b)) ?? double.PositiveInfinity), iter: 8, threads: 1);
    }

    private static Part At(Part part, decimal price) => part with { Info = part.Info with { Pack = null, Price = Math.Round(price, 1) } };

    private static bool IsNotElectric(BillLine line) => line.System != "electrics";

    private static decimal Price(Scenario scenario, ChoiceValue[] values, Func<BillLine, bool>? counts = null) =>
        Pricing.Total(Pricer.Bill(LayoutBuilder.Build(scenario, Layout.Of(values, scenario.Systems.Choices)).Parts, scenario.Stock).Where(l => counts?.Invoke(l) ?? true));
}
