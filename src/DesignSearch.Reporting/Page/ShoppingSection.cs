using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Money;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The shopping list of the first pick, made to be printed and ticked off: by article, and again by what it is for.</summary>
internal static class ShoppingSection
{
    private const string Piece = "piece";
    private const string Set = "set";

    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout, IReadOnlyList<string> names, string currency)
    {
        var list = ListFile.PathOf(layout);
        var head = Markup.Of(
            $"{Say.Capital(PlainText.Name(layout.Title))}: layout {layout.Rank}, {Say.Joined(names)}. "
                + $"Prices in {PlainText.Cut(currency, 24)}.");
        return Markup.Of($"""
            <section class="shopping" aria-labelledby="shopping"><h2 id="shopping">Shopping list</h2>
            <p>{head}<span class="screen"> The same list for a spreadsheet: <a href="{list}">{list}</a></span></p>
            {Articles(layout, currency)}</section>
            <section class="parts" aria-labelledby="parts"><details class="fold"><summary id="parts">What each part is for</summary>
            <p>The same parts, where they go; what is bought together shares its price by how much each place needs.</p>
            {Table(layout, currency, "Parts by system, layout " + layout.Rank)}</details></section>

            """);
    }

    /// <summary>The bill of a layout by what it is for, with a subtotal for each system.</summary>
    public static Markup Table(JudgedLayout layout, string currency, string caption)
    {
        var groups = layout.Bill.GroupBy(l => l.System).Select(g => Markup.Of($"""
            <tbody><tr class="system"><th scope="rowgroup" colspan="3">{Say.Capital(PlainText.Name(g.Key))}</th></tr>
            {g.Select(Line)}<tr class="sub">{Together(g.Key, g.Sum(l => l.Total))}</tr></tbody>

            """));
        return PageTable.Box(caption, Markup.Of($"""
            <table class="bill"><caption>{caption}</caption>
            <thead><tr><th scope="col">part</th>{Head("how much")}{Head("its share")}</tr></thead>
            {groups}<tbody><tr class="sum"><th scope="row" colspan="2">Build price</th>{Price(layout, currency)}</tr></tbody></table>
            """));
    }

    /// <summary>The bill in short: what, how much of it to buy, what it costs.</summary>
    public static Markup Short(JudgedLayout layout, string currency) => PageTable.Of(
        $"What to buy for layout {Say.Whole(layout.Rank)} [{PlainText.Cut(currency, 24)}]",
        [new("part"), new("to buy", IsFigure: true), new("to pay", IsFigure: true)],
        BillArticle.Of(layout.Bill).Select(a => new Cell[] { PlainText.Name(a.Name), ToBuy(a), Say.Cents(a.Total) }));

    private static Markup Articles(JudgedLayout layout, string currency)
    {
        var caption = "Shopping list, layout " + layout.Rank;
        // On a narrow screen what to buy, what is left and what to pay are enough.
        Markup[] figures = [Head("to buy"), Head("of it used", "n more"), Head("left over"), Head("price a unit", "n more"), Head("to pay")];
        return PageTable.Box(caption, Markup.Of($"""
            <table class="bill articles"><caption>{caption}</caption>
            <thead><tr><th scope="col">got it</th><th scope="col">part</th>{figures}</tr></thead>
            <tbody>
            {BillArticle.Of(layout.Bill).Select(Article)}
            <tr class="sum"><td></td><th scope="row" colspan="2">Build price</th><td class="more"></td><td></td><td class="more"></td>{Price(layout, currency)}</tr>
            </tbody></table>
            """));
    }

    private static Markup Article(BillArticle article)
    {
        var name = PlainText.Name(article.Name);
        var used = article.Quantity - article.Owned;
        var left = article.LeftOver > 0 ? Amount(article.LeftOver, article.Unit) : "";
        var onHand = Markup.When(
            article.Owned > 0, () => Markup.Of($"<small>and {Amount(article.Owned, article.Unit)} on hand</small>"));
        return Markup.Of($"""
            <tr><td class="tick"><input type="checkbox" aria-label="got it: {name}"></td><th scope="row">{name}</th>
            <td class="n">{ToBuy(article)}</td><td class="n more">{Amount(used, article.Unit)}{onHand}</td><td class="n">{left}</td>
            <td class="n more">{Say.Cents(article.UnitPrice)}</td><td class="n">{Say.Cents(article.Total)}</td></tr>

            """);
    }

    private static string ToBuy(BillArticle article) => article switch
    {
        { Bought: 0 } => "none",
        { Pack: { } pack, Packs: { } packs } => $"{Say.Quantity(packs)}\u00A0×\u00A0{Amount(pack, article.Unit)}",
        _ => Amount(article.Bought, article.Unit),
    };

    private static Markup Line(BillLine line)
    {
        var part = Markup.Of(
            $"""<th scope="row">{PlainText.Name(line.Name)}<small>{PlainText.Sentence(line.Why)} {Where(line)}</small></th>""");
        var amount = Markup.Of($"""<td class="n">{Amount(line.Quantity, line.Unit)}{Owned(line)}</td>""");
        return Markup.Of($"""<tr>{part}{amount}<td class="n">{Say.Cents(line.Total)}</td></tr>{"\n"}""");
    }

    private static Markup Together(string system, decimal total)
    {
        var words = Say.Capital(PlainText.Name(system));
        return Markup.Of($"""<th scope="row" colspan="2">{words}, together</th><td class="n">{Say.Cents(total)}</td>""");
    }

    private static Markup Price(JudgedLayout layout, string currency) =>
        Markup.Of($"""<td class="n">{Say.Cents(layout.BuildPrice)} {PlainText.Cut(currency, 24)}</td>""");

    private static Markup Head(string words, string kind = "n") => Markup.Of($"""<th scope="col" class="{kind}">{words}</th>""");

    private static string Where(BillLine line) => line.Where.Length == 0 ? "" : $"Goes: {PlainText.Name(line.Where)}.";

    private static Markup Owned(BillLine line) => Markup.When(line.Owned > 0, () => Markup.Of($"<small>{Amount(line.Owned, line.Unit)} on hand</small>"));

    private static string Amount(decimal quantity, string unit) => Say.Quantity(quantity) + "\u00A0" + unit switch
    {
        "m2" => "m²",
        "m3" => "m³",
        Piece or Set => Written.Noun(quantity == 1 ? 1 : 2, unit),
        _ => PlainText.Cut(unit, 24),
    };
}
