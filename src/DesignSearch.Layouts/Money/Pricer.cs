using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>Prices a layout: the one function behind the search's build price and the bill's total.</summary>
public static class Pricer
{
    /// <summary>The lines of the shopping list; the same part needed in two places is two lines and shares what is owned.</summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned.</param>
    /// <param name="level">Which of the prices are paid.</param>
    public static IReadOnlyList<BillLine> Bill(IReadOnlyList<NeededPart> parts, Stock stock, PriceLevel level = PriceLevel.Usual)
    {
        var used = new Dictionary<string, decimal>(StringComparer.Ordinal);
        var lines = new List<BillLine>(parts.Count);
        foreach (var need in parts)
        {
            var left = stock.QuantityOf(need.Part.Id) - used.GetValueOrDefault(need.Part.Id);
            var line = Pricing.Line(need.Part, need.Quantity, Math.Max(0, left), need.System, need.Why, need.Where, level);
            used[need.Part.Id] = used.GetValueOrDefault(need.Part.Id) + line.Owned;
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>Present value of what must be bought again within the years of use, what was owned at first included.</summary>
    public static decimal Replacements(IReadOnlyList<NeededPart> parts, MoneyTerms terms) =>
        Cents(parts.Sum(p => (double)(p.Quantity * p.Part.Info.PriceAt(terms.Prices)) * PresentValue.OfReplacements(terms.Interest, p.Part.Info.LifeYears, terms.Years)));

    /// <summary>Running cost of a layout.</summary>
    /// <param name="kwhPerWinter">Electricity of one winter, weighted over the winters [kWh]; nothing runs in summer.</param>
    /// <param name="cheapKwhPerWinter">The part of it that falls into the hours of the night tariff [kWh].</param>
    /// <param name="replacements">Present value of replacements.</param>
    /// <param name="terms">Tariff, interest, years.</param>
    public static RunningCost Running(double kwhPerWinter, double cheapKwhPerWinter, decimal replacements, MoneyTerms terms)
    {
        var cheap = terms.Night is { } night ? cheapKwhPerWinter * (double)(terms.TariffPerKwh - night.PerKwh) : 0;
        var yearly = Cents(kwhPerWinter * (double)terms.TariffPerKwh - cheap);
        return new(yearly, replacements, Cents((double)yearly * PresentValue.OfYearlyPayments(terms.Interest, terms.Years)) + replacements);
    }

    /// <summary>Hours of own work.</summary>
    public static double LabourHours(IReadOnlyList<NeededPart> parts) => Math.Round(parts.Sum(p => (double)p.Quantity * p.Part.Info.LabourHours), 1);

    /// <summary>What the hours of own work are counted at; 0 without a rate.</summary>
    public static decimal Labour(double hours, MoneyTerms terms) => Cents(hours * (double)terms.LabourRatePerHour);

    private static decimal Cents(double amount) => decimal.Round((decimal)amount, 2, MidpointRounding.AwayFromZero);
}
