using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>Where the heat came from and where it went: a pair of bars for each pick and the same figures as a table.</summary>
internal static class HeatSection
{
    // Of the width of the bars, for each letter of the words in a piece.
    private const double PercentPerLetter = 1;

    /// <summary>The section.</summary>
    public static Markup Of(Judgement judgement)
    {
        var houses = PickNames.Of(judgement)
            .Select(p => (Name: PickNames.Heading(p.Names), Flows: HeatFlow.Of(p.Layout)))
            .Prepend((Name: "Bare house", Flows: HeatFlow.Of(judgement.BareHouse)))
            .ToList();
        var largest = Math.Max(1e-9, houses.Max(h => Math.Max(Total(h.Flows, true), Total(h.Flows, false))));
        return Markup.Of($"""
            <section aria-labelledby="heat"><h2 id="heat">Where the heat came from and where it went</h2>
            <p>{Finding(houses)} The mean of the winters by their weights; the pieces stand in the order of the table.</p>
            {houses.Select((h, i) => Bars(h.Name, h.Flows, largest, i))}{Table(houses)}</section>

            """);
    }

    private static string Finding(List<(string Name, IReadOnlyList<HeatFlow> Flows)> houses)
    {
        var (name, flows) = houses[Math.Min(1, houses.Count - 1)];
        var (from, to) = (flows.Where(f => f.ComesIn).MaxBy(f => f.Kwh)!, flows.Where(f => !f.ComesIn).MaxBy(f => f.Kwh)!);
        return $"{name}: most heat came in as {from.Name} ({Share(from)}) and most went {to.Name} ({Share(to)}).";

        string Share(HeatFlow flow) => Say.Percent(flow.Kwh / Math.Max(1e-9, Total(flows, flow.ComesIn)));
    }

    private static Markup Bars(string name, IReadOnlyList<HeatFlow> flows, double largest, int number)
    {
        var (into, outOf) = (Bar(flows.Where(f => f.ComesIn), largest, 0), Bar(flows.Where(f => !f.ComesIn), largest, 34));
        return Markup.Of($"""
            <figure><figcaption id="heat-{number}">{name}: {Say.Kwh(Total(flows, true))} in, {Say.Kwh(Total(flows, false))} out</figcaption>
            <svg class="bars" width="100%" height="66" role="img" aria-labelledby="heat-{number}">{into}{outOf}</svg></figure>

            """);
    }

    private static Markup Bar(IEnumerable<HeatFlow> flows, double largest, int top)
    {
        var left = 0.0;
        var pieces = new List<Markup>();
        foreach (var flow in flows.Where(f => f.Kwh > 0))
        {
            var wide = 100 * flow.Kwh / largest;
            var words = wide >= PercentPerLetter * flow.Name.Length
                ? Markup.Of($"""<text x="{left + (wide / 2)}%" y="{top + 21}" text-anchor="middle">{flow.Name}</text>""")
                : Markup.None;
            var way = flow.ComesIn ? "in" : "out";
            var piece = Markup.Of($"""<rect class="{way}" x="{left}%" y="{top + 1}" width="{wide}%" height="30"/>""");
            pieces.Add(Markup.Of($"<g><title>{flow.Name}, {Say.Kwh(flow.Kwh)}</title>{piece}{words}</g>"));
            left += wide;
        }

        return Markup.All(pieces);
    }

    private static Markup Table(List<(string Name, IReadOnlyList<HeatFlow> Flows)> houses)
    {
        // One layout may have a source that another has not.
        var shown = houses.SelectMany(h => h.Flows).Where(f => f.Kwh > 0).DistinctBy(f => (f.Id, f.ComesIn)).OrderByDescending(f => f.ComesIn);
        var rows = shown.Select(
            f => houses.Select(h => Kwh(h.Flows, f))
                .Select(kwh => Cell.Figure(Say.TwoFigures(kwh), kwh))
                .Prepend(f.ComesIn ? "in" : "out")
                .Prepend(f.Name)
                .ToArray());
        return PageTable.Of("Heat over the season [kWh]", [new("flow"), new("way"), .. houses.Select(h => new Column(h.Name, IsFigure: true))], rows, sortable: true);
    }

    private static double Kwh(IReadOnlyList<HeatFlow> flows, HeatFlow like) => flows.FirstOrDefault(f => f.Id == like.Id && f.ComesIn == like.ComesIn)?.Kwh ?? 0;

    private static double Total(IReadOnlyList<HeatFlow> flows, bool comesIn) => flows.Where(f => f.ComesIn == comesIn).Sum(f => f.Kwh);
}
