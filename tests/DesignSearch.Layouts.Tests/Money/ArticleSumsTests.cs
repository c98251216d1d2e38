using CsCheck;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>A bill adds up the same by article, by system and in the search, whatever is owned; packs are whole and none is bought in vain.</summary>
public sealed class ArticleSumsTests
{
    private const int Draws = 500;

    private static readonly Scenario Wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));

    private static readonly Gen<Layout> Layouts = Gen.Int[0, int.MaxValue - 1].Array[Wide.Choices.Count].Select(draw =>
        Layout.Of([.. draw.Select((d, i) => Wide.Choices[i].Levels[d % Wide.Choices[i].Levels.Count])], Wide.Systems.Choices));

    private static readonly Gen<Stock> Stocks = Gen.Select(Gen.Int[0, Wide.Catalogue.All.Count - 1], Gen.Int[0, 600]).Array[0, 60].Select(owned =>
        Stock.Of(owned.DistinctBy(o => o.Item1).Select(o => (Wide.Catalogue.All[o.Item1].Id, o.Item2 / 10m))));

    [Fact]
    public void Articles_systems_and_the_search_come_to_the_same_cent() => Gen.Select(Layouts, Stocks, Gen.Int[0, 3]).Sample((layout, stock, level) =>
    {
        var parts = LayoutBuilder.Build(Wide, layout).Parts;
        var bill = Pricer.Bill(parts, stock, (PriceLevel)level);
        var price = Pricer.BuildPrice(parts, stock, (PriceLevel)level);
        Assert.Equal(price, BillArticle.Of(bill).Sum(a => a.Total));
        Assert.Equal(price, bill.GroupBy(l => l.System).Sum(g => g.Sum(l => l.Total)));
        Assert.All(bill, l => Assert.True(l.Total >= 0 && decimal.Round(l.Total, 2) == l.Total, l.ToString()));
    }, iter: Draws);

    [Fact]
    public void An_article_is_bought_in_whole_packs_that_hold_what_is_used() => Gen.Select(Layouts, Stocks).Sample((layout, stock) =>
    {
        var bill = Pricer.Bill(LayoutBuilder.Build(Wide, layout).Parts, stock);
        foreach (var article in BillArticle.Of(bill))
        {
            Assert.True(Wide.Catalogue.TryFind<IPart>(article.PartId, out var part));
            Assert.Equal(part.Info.Pack, article.Pack);
            var (used, owned) = (bill.Where(l => l.PartId == article.PartId).Sum(l => l.Quantity), stock.QuantityOf(article.PartId));
            // Half a piece on hand is none.
            Assert.Equal(Math.Min(used, part.Unit is PartUnit.Piece or PartUnit.Set ? Math.Floor(owned) : owned), article.Owned);
            Assert.True(article.Bought + article.Owned >= used && article.LeftOver >= 0, article.ToString());
            Assert.True(article.Pack is { } pack ? article.LeftOver < pack && article.Bought % pack == 0 : article.LeftOver == 0, article.ToString());
            Assert.Equal(decimal.Round(article.Bought * article.UnitPrice, 2, MidpointRounding.AwayFromZero), article.Total);
        }
    }, iter: Draws);

    // Each line pays by what it has to buy, within a cent of its exact share.
    [Fact]
    public void A_line_pays_its_share_within_a_cent() => Layouts.Sample(layout =>
    {
        var bill = Pricer.Bill(LayoutBuilder.Build(Wide, layout).Parts, Stock.Empty);
        foreach (var article in bill.GroupBy(l => l.PartId))
        {
            var (total, wanted) = (article.Sum(l => l.Total), article.Sum(l => l.ToBuy));
            Assert.All(article, l => Assert.True(Math.Abs(l.Total - (total * l.ToBuy / wanted)) < 0.01m, l.ToString()));
        }
    }, iter: Draws);

    [Fact]
    public void What_is_bought_again_is_bought_in_packs_too()
    {
        var glycol = Wide.Catalogue.TryFind<IPart>("glycol-pure", out var found) ? found : throw new InvalidOperationException();
        var terms = Wide.Money with { Interest = 0, Years = 5 };
        NeededPart[] parts = [new(glycol, 3m, new("heap", "", "")), new(glycol, 3m, new("loop", "", ""))];
        // 6 L are two canisters of 5 L at 11 a litre, once more after four years.
        Assert.Equal(110.00m, Pricer.Replacements(parts, Stock.Empty, terms));
        Assert.Equal(110.00m, Assert.Single(Pricer.Wears(parts, Stock.Empty, terms)).Price);
        Assert.Equal([55.00m, 55.00m], Pricer.Bill(parts, Stock.Empty).Select(l => l.Total));
    }
}
