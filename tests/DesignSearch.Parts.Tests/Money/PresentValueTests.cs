using DesignSearch.Parts.Money;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class PresentValueTests
{
    private const string Source = "ASTM E917 / NIST Handbook 135 definitions; values from published annuity tables";

    [Theory]
    [InlineData(0.03, 5, 4.5797, 0.21835, 0.8626)]
    [InlineData(0.03, 10, 8.5302, 0.11723, 0.7441)]
    [InlineData(0.03, 15, 11.9379, 0.08377, 0.6419)]
    [InlineData(0.03, 20, 14.8775, 0.06722, 0.5537)]
    [InlineData(0.03, 25, 17.4131, 0.05743, 0.4776)]
    [InlineData(0.05, 10, 7.7217, 0.12950, 0.6139)]
    [InlineData(0.05, 15, 10.3797, 0.09634, 0.4810)]
    [InlineData(0.05, 20, 12.4622, 0.08024, 0.3769)]
    [InlineData(0.08, 10, 6.7101, 0.14903, 0.4632)]
    [InlineData(0.08, 15, 8.5595, 0.11683, 0.3152)]
    [InlineData(0.08, 20, 9.8181, 0.10185, 0.2145)]
    public void Annuity_tables_are_met(double rate, int years, double yearly, double recovery, double once)
    {
        var id = FormattableString.Invariant($"money K {rate * 100} % {years} years");
        Validation.Equal(id + " yearly", "present value of yearly payments [1]", yearly, PresentValue.OfYearlyPayments(rate, years), 1e-4, Source, "PresentValue.OfYearlyPayments");
        Validation.Equal(id + " recovery", "capital recovery [1/a]", recovery, 1 / PresentValue.OfYearlyPayments(rate, years), 1e-5, Source, "PresentValue.OfYearlyPayments");
        Validation.Equal(id + " once", "present value of one payment [1]", once, PresentValue.OfOnePayment(rate, years), 1e-4, Source, "PresentValue.OfOnePayment");
    }

    [Theory]
    [InlineData(0.03, 0.02, 20, 18.0812)]
    [InlineData(0.05, 0.03, 15, 12.9054)]
    [InlineData(0.04, 0.04, 10, 10)]
    public void Growing_payments_are_met(double rate, double growth, int years, double expected) =>
        Validation.Equal(
            FormattableString.Invariant($"money K growing {growth * 100} % at {rate * 100} % {years} years"),
            "present value of growing payments [1]",
            expected,
            PresentValue.OfYearlyPayments(((1 + rate) / (1 + growth)) - 1, years),
            1e-4,
            "ASTM E917 / NIST Handbook 135 formula, recomputed",
            "PresentValue.OfYearlyPayments");

    [Fact]
    public void Rate_near_zero_counts_the_payments()
    {
        Assert.Equal(10, PresentValue.OfYearlyPayments(0, 10), 12);
        Assert.Equal(PresentValue.OfYearlyPayments(1.1e-6, 20), PresentValue.OfYearlyPayments(0.9e-6, 20), 4);
        Assert.True(PresentValue.OfYearlyPayments(-0.01, 10) > 10);
    }

    [Fact]
    public void Sum_of_single_payments_is_the_series()
    {
        var sum = Enumerable.Range(1, 12).Sum(n => PresentValue.OfOnePayment(0.037, n));
        Assert.Equal(sum, PresentValue.OfYearlyPayments(0.037, 12), 12);
    }

    [Fact]
    public void Replacements_fall_inside_the_span()
    {
        Assert.Equal(0, PresentValue.OfReplacements(0.03, 10, 10));
        Assert.Equal(PresentValue.OfOnePayment(0.03, 10), PresentValue.OfReplacements(0.03, 10, 20), 12);
        Assert.Equal(3, PresentValue.OfReplacements(0, 5, 20), 12);
        Assert.Equal(0, PresentValue.OfReplacements(0.03, 50, 20));
    }

    [Fact]
    public void Impossible_rates_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PresentValue.OfYearlyPayments(-1, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => PresentValue.OfOnePayment(double.NaN, 5));
    }
}
