using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Money;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The shopping list of the first pick, made to be printed and ticked off.</summary>
internal static class ShoppingSection
{
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
            {Table(layout, currency, "Shopping list, layout " + layout.Rank, ticks: true)}</section>

            """);
    }

    /// <summary>The bill of a layout as a table with a subtotal for each subsystem.</summary>
    public static Markup Table(JudgedLayout layout, string currency, string caption, bool ticks)
    {
        var groups = layout.Bill.GroupBy(l => l.System).Select(g => Markup.Of($"""
            <tbody><tr class="system"><th scope="rowgroup" colspan="{(ticks ? 5 : 4)}">{Say.Capital(PlainText.Name(g.Key))}</th></tr>
            {g.Select(l => Line(l, ticks))}<tr class="sub">{Tick(ticks)}{Together(g.Key, g.Sum(l => l.Total))}</tr></tbody>

            """));
        var tick = Markup.When(ticks, () => Markup.Of($"""<th scope="col">got it</th>"""));
        var price = Markup.Of($"{Say.Cents(layout.BuildPrice)} {PlainText.Cut(currency, 24)}");
        return PageTable.Box(caption, Markup.Of($"""
            <table class="bill"><caption>{caption}</caption>
            <thead><tr>{tick}<th scope="col">part</th>{Head("how much")}{Head("price of one")}{Head("to pay")}</tr></thead>
            {groups}<tbody><tr class="sum">{Tick(ticks)}<th scope="row" colspan="3">Build price</th><td class="n">{price}</td></tr></tbody></table>
            """));
    }

    /// <summary>The bill in short: what, how much, what it costs.</summary>
    public static Markup Short(JudgedLayout layout, string currency) => PageTable.Of(
        $"What to buy for layout {Say.Whole(layout.Rank)} [{PlainText.Cut(currency, 24)}]",
        [new("part"), new("how much", IsFigure: true), new("to pay", IsFigure: true)],
        layout.Bill.Select(l => new Cell[] { PlainText.Name(l.Name), Amount(l.Quantity, l.Unit), Say.Cents(l.Total) }));

    private static Markup Line(BillLine line, bool ticks)
    {
        var name = PlainText.Name(line.Name);
        var tick = Markup.When(
            ticks, () => Markup.Of($"""<td class="tick"><input type="checkbox" aria-label="got it: {name}"></td>"""));
        var part = Markup.Of($"""<th scope="row">{name}<small>{PlainText.Sentence(line.Why)} {Where(line)}</small></th>""");
        var amount = Markup.Of($"""<td class="n">{Amount(line.Quantity, line.Unit)}{Owned(line)}</td>""");
        var prices = Markup.Of($"""<td class="n">{Say.Cents(line.UnitPrice)}</td><td class="n">{Say.Cents(line.Total)}</td>""");
        return Markup.Of($"<tr>{tick}{part}{amount}{prices}</tr>\n");
    }

    private static Markup Together(string system, decimal total)
    {
        var words = Say.Capital(PlainText.Name(system));
        return Markup.Of($"""<th scope="row" colspan="3">{words}, together</th><td class="n">{Say.Cents(total)}</td>""");
    }

    private static Markup Head(string words) => Markup.Of($"""<th scope="col" class="n">{words}</th>""");

    private static string Where(BillLine line) => line.Where.Length == 0 ? "" : $"Goes: {PlainText.Name(line.Where)}.";

    private static Markup Owned(BillLine line) => Markup.When(line.Owned > 0, () => Markup.Of($"<small>{Amount(line.Owned, line.Unit)} on hand</small>"));

    private static Markup Tick(bool ticks) => Markup.When(ticks, () => Markup.Of($"<td></td>"));

    private static string Amount(decimal quantity, string unit) => Say.Quantity(quantity) + "\u00A0" + unit switch
    {
        "m2" => "m²",
        "piece" or "set" => Written.Noun(quantity == 1 ? 1 : 2, unit),
        _ => PlainText.Cut(unit, 24),
    };
}
