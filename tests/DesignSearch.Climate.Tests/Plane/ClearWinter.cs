using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Tests;

/// <summary>A winter of clear days: 0.68 of the light above the atmosphere reaches the ground.</summary>
internal static class ClearWinter
{
    public static Winter At(double latitude)
    {
        var place = Places.At(latitude, 10, 1);
        var start = new DateTime(2001, latitude < 0 ? 4 : 10, 2);
        var hours = 110 * 24;
        var days = new SyntheticDays(place, start, 110);
        Array.Fill(days.Clearness, 0.68);
        var global = new double[hours];
        for (var d = 0; d < 110; d++)
            CloudMaker.Smooth(global, days, d);
        var diffuse = global.Select((g, h) => days.Above[h] > 0 ? g * BeamSplit.ErbsHourly(g / days.Above[h]) : 0).ToArray();
        double[] Flat(double value) => [.. Enumerable.Repeat(value, hours)];
        return WinterBuilder.Build("clear", WinterKind.Typical, place, start, 240, new(Flat(5), Flat(0), Flat(2), global, diffuse, null), new(8, 6, 20), new(), []);
    }
}
