using CsCheck;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>What the air takes of several offers at once, against halving the interval in which the balance of the air lies.</summary>
public sealed class OfferDecisionTests
{
    private const double Pivot = 400;

    private static readonly Gen<(double Set, double Source, double Conductance)> Any =
        from set in Gen.Double[-5, 10]
        from alike in Gen.Bool
        from strength in Gen.Double[0, 300]
        from most in Gen.Double[0, 6000]
        from none in Gen.Int[0, 3]
        let at = alike ? Math.Round(set) : set
        select none == 0 ? (at, 0.0, 0.0) : alike ? (at, most, 0.0) : (at, (strength * at) + most, strength);

    [Fact]
    public void The_air_and_what_each_gives_are_those_of_the_balance() => Any.Array[1, 6].Select(Gen.Double[-6000, 6000]).Sample((offers, rest) =>
    {
        var (air, given) = Decided(offers, rest);
        var (low, high) = (-200.0, 200.0);
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            var heat = offers.Sum(o => middle < o.Set ? o.Source - (o.Conductance * middle) : 0);
            (low, high) = (Pivot * middle) - rest < heat ? (middle, high) : (low, middle);
        }

        Assert.Equal(low, air, 1e-9);
        Assert.Equal((Pivot * air) - rest, given.Sum(), 1e-6);
        Assert.All(offers.Zip(given), o => Assert.InRange(o.Second, -1e-9, Math.Max(0, o.First.Source - (o.First.Conductance * air)) + 1e-6));

        // Whoever is set lower gives nothing before the higher one gives all.
        for (var i = 0; i < offers.Length; i++)
        {
            for (var j = 0; j < offers.Length; j++)
            {
                var comesFirst = offers[i].Set > offers[j].Set || (offers[i].Set == offers[j].Set && i < j);
                if (comesFirst && given[j] > 1e-6)
                    Assert.Equal(offers[i].Source - (offers[i].Conductance * air), given[i], 1e-6);
            }
        }
    }, iter: 20_000);

    [Fact]
    public void Two_alone_have_the_bits_of_many() => Any.Array[2].Select(Gen.Double[-6000, 6000]).Sample((offers, rest) =>
    {
        var (release, heater) = (offers[0], (offers[1].Set, Source: Math.Max(0, offers[1].Source), Conductance: 0.0));
        var room = Room([(-3, 0, 0), release, heater, (20, 0, 0)]);
        var (p, r) = (Lane1.Of(Pivot), Lane1.Of(rest));
        OfferDecision.Decide(ref p, ref r, room.AsSpan());
        OfferDecision.Decide(
            Lane1.Of(Pivot), Lane1.Of(rest), Lane1.Of(release.Set), Lane1.Of(release.Source), Lane1.Of(release.Conductance), Lane1.Of(heater.Set), Lane1.Of(heater.Source),
            out var need, out _, out var taken, out var takenConductance, out var heat);
        Assert.Equal((At(room[1].Need), At(room[1].Taken), At(room[1].TakenConductance), At(room[2].Taken)), (At(need), At(taken), At(takenConductance), At(heat)));
        Assert.Equal((At(p), At(r)), (Pivot + At(takenConductance), rest + At(taken) + At(heat)));
    }, iter: 5_000);

    [Theory]
    [InlineData(5, 4, 3000, 0)]
    [InlineData(4, 5, 0, 3000)]
    [InlineData(5, 5, 3000, 0)]
    public void The_one_set_higher_gives_first_and_of_two_alike_the_first(double firstC, double secondC, double first, double second)
    {
        // Five degrees want 3000 W; each could give 4000.
        var (_, given) = Decided([(firstC, 4000, 0), (secondC, 4000, 0)], (5 * Pivot) - 3000);
        Assert.Equal([first, second], given);
    }

    /// <summary>Soil of 4 °C behind 100 W/K and a fan of 20 W, set at 6 °C: at 6 °C it would cool.</summary>
    [Theory]
    [InlineData(0, 420)]
    [InlineData(5.9, 0)]
    [InlineData(6.1, 0)]
    public void What_would_cool_at_its_set_point_gives_all_or_nothing(double without, double atMost)
    {
        var (air, given) = Decided([(6, 420, 100), (-5, 1000, 0)], without * Pivot);
        Assert.Equal(without < 6 ? (without * Pivot + 420) / (Pivot + 100) : without, air, 1e-9);
        Assert.Equal(without < 6 ? 420 - 100 * air : 0, given[0], 1e-9);
        Assert.True(given[0] <= atMost && given[1] == 0);
    }

    private static (double Air, double[] Given) Decided((double Set, double Source, double Conductance)[] offers, double rest)
    {
        var room = Room(offers);
        var (p, r) = (Lane1.Of(Pivot), Lane1.Of(rest));
        OfferDecision.Decide(ref p, ref r, room.AsSpan());
        var air = r / p;
        return (At(air), [.. room.Select(o => At(o.Given(air)))]);
    }

    private static Offer<Lane1>[] Room((double Set, double Source, double Conductance)[] offers) =>
        [.. offers.Select(o => new Offer<Lane1> { SetC = Lane1.Of(o.Set), Source = Lane1.Of(o.Source), Conductance = Lane1.Of(o.Conductance) })];

    private static double At(in Lane1 lane) => Pack.At(lane, 0);
}
