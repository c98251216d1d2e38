using CsCheck;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Skin;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class PricingTests
{
    // Worked on paper: quantity, owned, unit price, total.
    [Theory]
    [InlineData("1", "0", "640.00", "640.00")]
    [InlineData("3", "0", "640.00", "1920.00")]
    [InlineData("12.5", "0", "2.60", "32.50")]
    [InlineData("17.35", "0", "1.90", "32.97")] // 32.965: half a cent goes up
    [InlineData("0.5", "0", "0.01", "0.01")] // 0.005: half a cent goes up
    [InlineData("12.5", "4.5", "2.60", "20.80")]
    [InlineData("2", "5", "90.00", "0.00")]
    [InlineData("0", "0", "90.00", "0.00")]
    [InlineData("33.33", "0", "3.33", "110.99")] // 110.9889
    public void Line_is_priced_as_on_paper(string quantity, string owned, string price, string total) =>
        Assert.Equal(Money(total), Pricing.Total(Money(quantity), Money(owned), Money(price)));

    [Fact]
    public void Bill_is_the_sum_of_its_rounded_lines()
    {
        var pipe = Sample.Part("pipe-a", 1.33m, PartUnit.Metre);
        var tank = Sample.Part("tank-a", 90m, PartUnit.Piece);
        BillLine[] bill =
        [
            Pricing.Line(pipe, 7.5m, 0, "pipe run", "joins collector and tank", "outdoors"), // 9.975 -> 9.98
            Pricing.Line(pipe, 7.5m, 2, "pipe run", "joins collector and tank", "outdoors"), // 7.315 -> 7.32
            Pricing.Line(tank, 2, 1, "tank", "stores heat", "in the house"),
        ];
        Assert.Equal(107.30m, Pricing.Total(bill));
        Assert.Equal(("m", 5.5m, 2m), (bill[1].Unit, bill[1].ToBuy, bill[1].Owned));
    }

    // Worked on paper: quantity, owned, unit price, pack, total.
    [Theory]
    [InlineData("27.3", "0", "3.70", "25", "185.00")] // two coils
    [InlineData("27.3", "2.3", "3.70", "25", "92.50")] // 25 m lack: one coil
    [InlineData("27.3", "2.2", "3.70", "25", "185.00")] // 25.1 m lack: two
    [InlineData("16", "0", "10.00", "1.25", "162.50")] // 13 boards
    [InlineData("15.2", "20", "5.60", "5", "0.00")]
    [InlineData("0.3", "0", "0.33", "0.1", "0.10")] // three of 0.1: 0.099
    public void An_article_in_packs_is_priced_as_on_paper(string quantity, string owned, string price, string pack, string total) =>
        Assert.Equal(Money(total), Pricing.Total(Money(quantity), Money(owned), Money(price), Money(pack)));

    // 10.00 over 1 + 1 + 1: 3.33 each, the cent that is left to the first. 0.05 over 2, 1, 0 and 3: 1.67, 0.83, 0 and 2.5 cents; two cents are left.
    [Fact]
    public void Shares_add_up_and_the_cents_left_go_to_the_largest_remainders()
    {
        Assert.Equal([3.34m, 3.33m, 3.33m], Pricing.Shares(10.00m, [1, 1, 1]));
        Assert.Equal([0.02m, 0.01m, 0.00m, 0.02m], Pricing.Shares(0.05m, [2, 1, 0, 3]));
        Assert.Equal([0m, 0m], Pricing.Shares(0m, [0, 0]));
    }

    [Fact]
    public void A_pack_that_holds_nothing_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Pricing.Total(1, 0, 1, 0));

    [Fact]
    public void Owning_more_than_the_need_is_no_credit()
    {
        var line = Pricing.Line(Sample.Part("a", 5m, PartUnit.Piece), 2, 7, "s", "w", "w");
        Assert.Equal((2m, 0m, 0m), (line.Owned, line.ToBuy, line.Total));
    }

    [Fact]
    public void Each_price_of_a_part_can_be_paid()
    {
        var part = Sample.Part("a", 10m, PartUnit.Piece);
        part = (Sealing)part with { Info = part.Info with { PriceLow = 8m, PriceHigh = 13m, PriceSecondHand = 4m } };
        Assert.Equal([20m, 16m, 26m, 8m], Enum.GetValues<PriceLevel>().Select(l => Pricing.Line(part, 2, 0, "s", "w", "w", l).Total));
        Assert.Equal(20m, Pricing.Line(Sample.Part("a", 10m, PartUnit.Piece), 2, 0, "s", "w", "w", PriceLevel.SecondHand).Total);
    }

    [Fact]
    public void Negative_amounts_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Pricing.Total(-1, 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pricing.Total(1, -1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pricing.Total(1, 0, -1));
    }

    [Fact]
    public void Cheaper_part_never_costs_more() =>
        Gen.Select(Cents, Cents, Cents, Cents).Sample((quantity, owned, price, less) =>
            Pricing.Total(quantity, owned, Math.Max(0, price - less)) <= Pricing.Total(quantity, owned, price));

    [Fact]
    public void Owning_more_never_costs_more() =>
        Gen.Select(Cents, Cents, Cents, Cents).Sample((quantity, owned, price, more) =>
            Pricing.Total(quantity, owned + more, price) <= Pricing.Total(quantity, owned, price));

    [Fact]
    public void Total_lies_within_half_a_cent_and_has_two_decimals() =>
        Gen.Select(Cents, Cents).Sample((quantity, price) =>
        {
            var total = Pricing.Total(quantity, 0, price);
            return Math.Abs(total - (quantity * price)) <= 0.005m && decimal.Round(total, 2) == total;
        });

    private static Gen<decimal> Cents => Gen.Int[0, 1_000_000].Select(i => i / 100m);

    private static decimal Money(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
