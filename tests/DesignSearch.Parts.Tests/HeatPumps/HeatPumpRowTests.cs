using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.HeatPumps;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class HeatPumpRowTests
{
    private const string Shared = "id,name,unit,price,price_low,price_high,price_second_hand,life_years,labour_hours,";
    private const string Points = "heat_at_12_w,cop_at_12,heat_at_7_w,cop_at_7,heat_at_2_w,cop_at_2,"
        + "heat_at_minus7_w,cop_at_minus7,heat_at_minus15_w,cop_at_minus15,";
    private const string Rest =
        "least_w,cop_gain_at_least,cycling_loss,least_outdoor_c,idle_w,lowest_set_c,volts,most_a,refrigerant,note\n";
    private const string Row = "hp-a,Pump A,piece,600.00,500.00,900.00,,10,9,";
    private const string Good = ",,3000,3.6,2400,2.7,1950,2.2,,,";
    private const string Tail = "700,1.3,0.25,-15,5,16,230,7,a2l,For tests.\n";

    private static IReadOnlyList<InputFault> Faults(string points = Good, string tail = Tail) =>
        Sample.FaultsOf("heat-pumps.csv", Shared + Points + Rest + Row + points + tail);

    [Fact]
    public void A_row_with_three_points_is_read()
    {
        Assert.Empty(Faults());
        var pump = Sample.InFolder(
            folder =>
            {
                var faults = new FaultList();
                return Catalogue.Load([folder], Kinds.All, faults).All.OfType<HeatPump>().Single();
            },
            ("heat-pumps.csv", Shared + Points + Rest + Row + Good + Tail));
        Assert.Equal([(-7, 1950, 2.2), (2, 2400, 2.7), (7, 3000, 3.6)], pump.Points);
        Assert.True(pump.IsFrostRated);
        Assert.Equal(RefrigerantClass.A2l, pump.Refrigerant);
    }

    // Some sheets give the same full output over a span of outdoor temperatures.
    [Fact]
    public void Neighbouring_points_may_be_equal() => Assert.Empty(Faults(",,3000,3.6,3000,3.6,1950,2.2,,,"));

    [Theory]
    [InlineData(",,3000,3.6,,,1950,2.2,,,", "three points")]
    [InlineData(",,3000,3.6,2400,,1950,2.2,1500,1.8,", "cop_at_2")]
    [InlineData(",,3000,3.6,,2.7,1950,2.2,1500,1.8,", "cop_at_2")]
    [InlineData(",,3000,3.6,3100,2.7,1950,2.2,,,", "heat_at_2_w")]
    [InlineData(",,3000,3.6,2400,3.7,1950,2.2,,,", "cop_at_2")]
    [InlineData(",,3000,3.6,2400,2.7,1950,1,,,", "more than 1")]
    [InlineData(",,3000,3.6,2400,2.7,1950,2.2,1200,,", "cop_at_minus15")]
    public void Points_that_cannot_be_are_told(string points, string expected) =>
        Assert.Contains(Faults(points), f => f.Expected.Contains(expected, StringComparison.Ordinal));

    [Theory]
    [InlineData("3100,1.3,0.25,-15,5,16,230,7,a2l,x\n", "least_w")]
    [InlineData("3000,1.3,0.25,-15,5,16,230,7,a2l,x\n", "cop_gain_at_least")]
    [InlineData("700,1.3,0.25,-5,5,16,230,7,a2l,x\n", "least_outdoor_c")]
    [InlineData("700,1.3,0.25,-15,5,16,230,3,a2l,x\n", "most_a")]
    [InlineData("700,1.3,0.25,-15,5,16,230,7,a2,x\n", "refrigerant")]
    public void Limits_that_cannot_be_are_told(string tail, string expected) =>
        Assert.Contains(Faults(tail: tail), f => f.Expected.Contains(expected, StringComparison.Ordinal));

    /// <summary>The invented units lie inside the bands of small real ones (from memory), by straight lines between their points.</summary>
    [Theory]
    [InlineData("hp-inverter", 8.3, 3.3, 4.0)]
    [InlineData("hp-inverter", 1.7, 2.4, 2.9)]
    [InlineData("hp-inverter", -8.3, 2.0, 2.4)]
    [InlineData("hp-inverter", -15, 1.6, 2.0)]
    [InlineData("hp-cold-climate", 8.3, 3.5, 4.3)]
    [InlineData("hp-cold-climate", 1.7, 2.7, 3.3)]
    [InlineData("hp-cold-climate", -8.3, 2.2, 2.7)]
    [InlineData("hp-cold-climate", -20, 1.5, 1.9)]
    public void Efficiency_of_starter_units_is_plausible(string id, double outdoorC, double low, double high) =>
        Assert.InRange(Line(Find(id), outdoorC, p => p.Cop), low, high);

    [Theory]
    [InlineData(1.7, 0.9, 1.1)]
    [InlineData(-8.3, 0.8, 1.0)]
    [InlineData(-20, 0.6, 0.75)]
    public void Output_of_the_cold_climate_unit_falls_plausibly(double outdoorC, double low, double high)
    {
        var pump = Find("hp-cold-climate");
        Assert.InRange(Line(pump, outdoorC, p => p.HeatW) / pump.HeatAt7W, low, high);
    }

    [Fact]
    public void The_cold_climate_unit_deserves_its_name()
    {
        var pump = Find("hp-cold-climate");
        Validation.Within("part heat-pump hp-cold-climate efficiency", "heat over electricity at -15 °C", 1.75, 2.5,
            pump.CopAtMinus15 ?? 0, "floor of a public list of qualified cold-climate units, 1.75 (neea.org)", "catalogs/starter/heat-pumps.csv");
        Validation.Within("part heat-pump hp-cold-climate output", "share of that at +7 °C, at -15 °C", 0.80, 0.85,
            pump.HeatAtMinus15W / pump.HeatAt7W ?? 0, "public programme for ductless units, north-west America, page of 2019 (a claim)", "catalogs/starter/heat-pumps.csv");
    }

    [Fact]
    public void The_starter_says_that_most_units_hold_no_frost_set_point()
    {
        var all = Starter.All.OfType<HeatPump>().ToList();
        Assert.True(all.Count >= 4);
        Assert.Contains(all, p => p.LowestSetPointC <= 8);
        Assert.True(all.Count(p => p.LowestSetPointC >= 16) >= all.Count / 2);
        Assert.Contains(all, p => p.LeastW == p.HeatAt7W);
        Assert.All(all, p => Assert.Null(p.Info.PriceSecondHand));
    }

    private static readonly Catalogue Starter = Load();

    private static HeatPump Find(string id) => Starter.TryFind<HeatPump>(id, out var part) ? part : throw new ArgumentException(id);

    private static double Line(HeatPump pump, double outdoorC, Func<(double OutdoorC, double HeatW, double Cop), double> value)
    {
        var points = pump.Points;
        var i = 1;
        while (i < points.Count - 1 && points[i].OutdoorC < outdoorC)
            i++;
        var (a, b) = (points[i - 1], points[i]);
        return value(a) + (value(b) - value(a)) * (outdoorC - a.OutdoorC) / (b.OutdoorC - a.OutdoorC);
    }

    private static Catalogue Load()
    {
        var faults = new FaultList();
        var catalogue = Catalogue.Load([Repository.At("catalogs", "starter")], Kinds.All, faults);
        faults.ThrowIfAny();
        return catalogue;
    }
}
