namespace DesignSearch.Parts.Money;

/// <summary>Present values with payments at the end of each year, as ASTM E917 and NIST Handbook 135 define them. Rates are shares: 0.03 for 3 %.</summary>
public static class PresentValue
{
    /// <summary>Present value of one unit paid in year n: (1 + i)^−n.</summary>
    /// <param name="rate">Interest rate, above −1.</param>
    /// <param name="years">Years from now, 0 or more.</param>
    public static double OfOnePayment(double rate, double years)
    {
        CheckRate(rate);
        return Math.Pow(1 + rate, -years);
    }

    /// <summary>Present value of one unit paid every year: (1 − (1 + i)^−n) / i; n when i is 0.</summary>
    /// <param name="rate">Interest rate, above −1.</param>
    /// <param name="years">Number of payments, 0 or more.</param>
    public static double OfYearlyPayments(double rate, double years)
    {
        CheckRate(rate);
        return Series(Math.Log(1 + rate), rate, years);
    }

    /// <summary>Present value of buying a thing again each time its life is over, the first purchase (now) left out, over a span of years.</summary>
    /// <param name="rate">Interest rate, above −1.</param>
    /// <param name="lifeYears">Life of the thing, above 0.</param>
    /// <param name="spanYears">Span, 0 or more; a replacement due at its very end is not made.</param>
    /// <returns>As a share of the price of one purchase.</returns>
    public static double OfReplacements(double rate, double lifeYears, double spanYears)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lifeYears);
        var sum = 0.0;
        for (var times = 1; times * lifeYears < spanYears - 1e-9; times++)
            sum += OfOnePayment(rate, times * lifeYears);
        return sum;
    }

    // Near a rate of 0 the quotient loses its digits; expm1 in this form does not.
    private static double Series(double logGrowth, double rate, double years)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(years);
        if (Math.Abs(rate) > 1e-6)
            return (1 - Math.Exp(-years * logGrowth)) / rate;
        var x = years * logGrowth;
        return years * (1 - (x / 2) + (x * x / 6)) * (1 - (rate / 2));
    }

    private static void CheckRate(double rate)
    {
        if (!(rate > -1))
            throw new ArgumentOutOfRangeException(nameof(rate), rate, "A rate must lie above −1.");
    }
}
