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
            if (ComesAgain(parts[i], stock, terms))
                sum += (double)(parts[i].Quantity * info.PriceAt(terms.Prices)) * PresentValue.OfReplacements(terms.Interest, info.LifeYears, terms.Years);
        }

        return Cents(sum);
    }

    /// <summary>Running cost of a layout.</summary>
    /// <param name="kwhPerWinter">Electricity of one winter, weighted over the winters [kWh]; nothing runs in summer.</param>
    /// <param name="cheapKwhPerWinter">The part of it that falls into the hours of the night tariff [kWh].</param>
    /// <param name="replacements">Present value of replacements.</param>
    /// <param name="terms">Tariff, interest, years.</param>
    /// <param name="upkeepPerYear">Upkeep of a year, as <see cref="UpkeepPerYear"/> sums it.</param>
    public static RunningCost Running(
        double kwhPerWinter, double cheapKwhPerWinter, decimal replacements, MoneyTerms terms, decimal upkeepPerYear = 0)
    {
        var cheap = terms.Night is { } night ? cheapKwhPerWinter * (double)(terms.TariffPerKwh - night.PerKwh) : 0;
        var yearly = Cents(kwhPerWinter * (double)terms.TariffPerKwh - cheap);
        var (current, upkeep) = (OverTheYears(yearly, terms), OverTheYears(upkeepPerYear, terms));
        return new(yearly, replacements, current + replacements + upkeep) { UpkeepPerYear = upkeepPerYear, UpkeepPresentValue = upkeep };
    }

    /// <summary>Present value of a sum paid at the end of each year of use.</summary>
    public static decimal OverTheYears(decimal perYear, MoneyTerms terms) =>
        Cents((double)perYear * PresentValue.OfYearlyPayments(terms.Interest, terms.Years));

    /// <summary>What the work that returns costs in a year: licensed hours, and own hours where the builder gave a rate.</summary>
    /// <param name="systems">What asks for it.</param>
    /// <param name="licensedPerHour">What an hour of a licensed person costs.</param>
    /// <param name="terms">The rate of own work.</param>
    public static decimal UpkeepPerYear(IReadOnlyList<DesignedSystem> systems, decimal licensedPerHour, MoneyTerms terms)
    {
        var (own, licensed) = (0.0, 0.0);
        for (var i = 0; i < systems.Count; i++)
        {
            foreach (var work in systems[i].Upkeep)
                (own, licensed) = (own + work.HoursPerYear, licensed + work.LicensedHoursPerYear);
        }

        return Cents((own * (double)terms.LabourRatePerHour) + (licensed * (double)licensedPerHour));
    }

    /// <summary>What wears out, or is hired again, within the years of use: one line a part.</summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned.</param>
    /// <param name="terms">Prices and years.</param>
    public static IReadOnlyList<Wear> Wears(IReadOnlyList<NeededPart> parts, Stock stock, MoneyTerms terms) =>
    [
        .. parts.Where(p => ComesAgain(p, stock, terms)).GroupBy(p => p.Part.Id)
            .Select(g => (g.First().Part, Quantity: g.Sum(p => p.Quantity)))
            .Select(p => new Wear(p.Part.Name, p.Part.Info.LifeYears, Pricing.Total(p.Quantity, 0, p.Part.Info.PriceAt(terms.Prices))))
            .OrderByDescending(w => w.CostPerYear).ThenBy(w => w.Name, StringComparer.Ordinal),
    ];

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

    // What outlives the years of use is bought once, and who owns what others hire never hires it.
    private static bool ComesAgain(NeededPart need, Stock stock, MoneyTerms terms) =>
        need.Part.Info.LifeYears < terms.Years && !(need.IsHired && stock.QuantityOf(need.Part.Id) >= need.Quantity);

    private static decimal Cents(double amount) => decimal.Round((decimal)amount, 2, MidpointRounding.AwayFromZero);
}
