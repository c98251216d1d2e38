using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Season.Flows;
using DesignSearch.Season.House;

namespace DesignSearch.Reporting.Page;

/// <summary>One way heat came in or went out over the season.</summary>
/// <param name="Id">The flow or store.</param>
/// <param name="Name">The flow in plain words.</param>
/// <param name="ComesIn">True for a gain.</param>
/// <param name="Kwh">Amount, never below zero [kWh].</param>
internal sealed record HeatFlow(string Id, string Name, bool ComesIn, double Kwh)
{
    private static readonly Flow[] Cover = [HouseFlows.CoverToAir, HouseFlows.CoverToSky];

    /// <summary>Every flow over the edge of a layout and every store, the mean of its winters by their weights: what came in first.</summary>
    /// <remarks>
    /// What can run either way stands twice, and one of the two is zero. Through the cover is one flow, net of air and sky: under a clear sky a
    /// cover is often colder than the air outside and takes heat from it only to lose it upwards, which says nothing about the house.
    /// </remarks>
    /// <param name="layout">The layout.</param>
    public static IReadOnlyList<HeatFlow> Of(JudgedLayout layout)
    {
        var books = layout.Winters[0].Outcome.Books;
        double Mean(Func<EnergyBooks, double> kwh) => layout.Winters.Sum(w => w.Weight * kwh(w.Outcome.Books));
        var inwards = books.Flows.Select(f => f.Flow).Where(f => books.IsOutside(f.From)).Select(f => (f.Id, In: f.Words, Out: f.Back, Kwh: Mean(b => b.Of(f))));
        var cover = (Id: "cover", In: "in through the cover", Out: "out through the cover", Kwh: -Mean(b => Cover.Sum(b.Of)));
        var outwards = books.Flows.Select(f => f.Flow).Where(f => books.IsOutside(f.To) && !Cover.Contains(f))
            .Select(f => (f.Id, In: f.Back, Out: f.Words, Kwh: -Mean(b => b.Of(f))));
        var stores = books.Stored.Select(s => s.Store).Select(s => (s.Id, In: "out of " + s.Words, Out: "left in " + s.Words, Kwh: -Mean(b => b.Of(s))));
        var all = inwards.Append(cover).Concat(outwards).Concat(stores).ToList();
        return
        [
            .. all.Where(f => f.In.Length > 0).Select(f => new HeatFlow(f.Id, f.In, true, Math.Max(0, f.Kwh))),
            .. all.Where(f => f.Out.Length > 0).Select(f => new HeatFlow(f.Id, f.Out, false, Math.Max(0, -f.Kwh))),
        ];
    }
}
