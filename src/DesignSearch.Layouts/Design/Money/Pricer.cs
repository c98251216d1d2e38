using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Design.Money;

/// <summary>Prices a layout: the one function behind the search's build price and the bill's total.</summary>
public static class Pricer
{
    /// <summary>The lines of the shopping list; the same part needed in two places is two lines and shares what is owned.</summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned.</param>
    /// <param name="level">Which of the prices are paid.</param>
    public static IReadOnlyList<BillLine> Bill(IReadOnlyList<NeededPart> parts, Stock stock, PriceLevel level = PriceLevel.Usual)
    {
        var free = new FreeStock(stock);
        return [.. parts.Select(need => Pricing.Line(need.Part, need.Quantity, free.Take(need), need.Purpose.System, need.Purpose.Why, need.Purpose.Where, level))];
    }

    /// <summary>The sum of the shopping list, without its lines.</summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned.</param>
    /// <param name="level">Which of the prices are paid.</param>
    public static decimal BuildPrice(IReadOnlyList<NeededPart> parts, Stock stock, PriceLevel level)
    {
        var (free, sum) = (new FreeStock(stock), 0m);
        for (var i = 0; i < parts.Count; i++)
            sum += Pricing.Total(parts[i].Quantity, free.Take(parts[i]), parts[i].Part.Info.PriceAt(level));
        return sum;
    }

    /// <summary>Present value of what must be bought or hired again within the years of use.</summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned: it wears out like the rest, but what is hired else is never hired.</param>
    /// <param name="terms">Prices, interest, years.</param>
    public static decimal Replacements(IReadOnlyList<NeededPart> parts, Stock stock, MoneyTerms terms)
    {
        var sum = 0.0;
        for (var i = 0; i < parts.Count; i++)
        {
            var info = parts[i].Part.Info;
            // What outlives the years of use is bought once.
            if (info.LifeYears < terms.Years && !(parts[i].IsHired && stock.QuantityOf(info.Id) >= parts[i].Quantity))
                sum += (double)(parts[i].Quantity * info.PriceAt(terms.Prices)) * PresentValue.OfReplacements(terms.Interest, info.LifeYears, terms.Years);
        }

        return Cents(sum);
    }

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
    public static double LabourHours(IReadOnlyList<NeededPart> parts)
    {
        var sum = 0.0;
        for (var i = 0; i < parts.Count; i++)
            sum += (double)parts[i].Quantity * parts[i].Part.Info.LabourHours;
        return Math.Round(sum, 1);
    }

    /// <summary>What the hours of own work are counted at; 0 without a rate.</summary>
    public static decimal Labour(double hours, MoneyTerms terms) => Cents(hours * (double)terms.LabourRatePerHour);

    private static decimal Cents(double amount) => decimal.Round((decimal)amount, 2, MidpointRounding.AwayFromZero);
}
