using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Season.Flows;

namespace DesignSearch.Reporting.Page;

/// <summary>One way heat came in or went out over the season.</summary>
/// <param name="Id">The flow or store.</param>
/// <param name="Name">The flow in plain words.</param>
/// <param name="ComesIn">True for a gain.</param>
/// <param name="Kwh">Amount, never below zero [kWh].</param>
internal sealed record HeatFlow(string Id, string Name, bool ComesIn, double Kwh)
{
    /// <summary>Every flow over the edge of a layout and every store, the mean of its winters by their weights: what came in first.</summary>
    /// <remarks>
    /// What can run either way stands twice, and one of the two is zero: under a clear sky, for instance, a cover is often colder
    /// than the outside air and takes heat from it.
    /// </remarks>
    public static IReadOnlyList<HeatFlow> Of(JudgedLayout layout)
    {
        var books = layout.Winters[0].Outcome.Books;
        double Mean(Func<EnergyBooks, double> kwh) => layout.Winters.Sum(w => w.Weight * kwh(w.Outcome.Books));
        var inwards = books.Flows.Select(f => f.Flow).Where(f => books.IsOutside(f.From)).Select(f => (f.Id, In: f.Words, Out: f.Back, Kwh: Mean(b => b.Of(f))));
        var outwards = books.Flows.Select(f => f.Flow).Where(f => books.IsOutside(f.To)).Select(f => (f.Id, In: f.Back, Out: f.Words, Kwh: -Mean(b => b.Of(f))));
        var stores = books.Stored.Select(s => s.Store).Select(s => (s.Id, In: "out of " + s.Words, Out: "left in " + s.Words, Kwh: -Mean(b => b.Of(s))));
        var all = inwards.Concat(outwards).Concat(stores).ToList();
        return
        [
            .. all.Where(f => f.In.Length > 0).Select(f => new HeatFlow(f.Id, f.In, true, Math.Max(0, f.Kwh))),
            .. all.Where(f => f.Out.Length > 0).Select(f => new HeatFlow(f.Id, f.Out, false, Math.Max(0, -f.Kwh))),
        ];
    }
}
