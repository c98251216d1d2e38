using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Design.Money;

/// <summary>Prices a layout: the one function behind the search's build price and the bill's total.</summary>
public static class Pricer
{
    // One for each thread, so that a search prices without a new list for every layout.
    [ThreadStatic]
    private static ArticleSums? kept;

    /// <summary>
    /// The lines of the shopping list. The same part needed in two places is two lines, shares what is owned, is bought together, in whole
    /// packs where it comes in packs, and shares that price by what each line has to buy.
    /// </summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned.</param>
    /// <param name="level">Which of the prices are paid.</param>
    public static IReadOnlyList<BillLine> Bill(IReadOnlyList<NeededPart> parts, Stock stock, PriceLevel level = PriceLevel.Usual)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (free, lines) = (new FreeStock(stock), new BillLine[parts.Count]);
        for (var i = 0; i < lines.Length; i++)
        {
            var (need, to) = (parts[i], parts[i].Purpose);
            lines[i] = Pricing.Line(need.Part, need.Quantity, free.Take(need), to.System, to.Why, to.Where, level);
        }

        foreach (var article in Enumerable.Range(0, lines.Length).Where(i => IsMeasured(parts[i].Part)).GroupBy(i => parts[i].Part, ReferenceEqualityComparer.Instance))
        {
            var wanted = article.Select(i => lines[i].ToBuy).ToList();
            var first = lines[article.First()];
            var shares = Pricing.Shares(Pricing.Total(wanted.Sum(), 0, first.UnitPrice, first.Pack), wanted);
            foreach (var (i, share) in article.Zip(shares))
                lines[i] = lines[i] with { Total = share };
        }

        return lines;
    }

    /// <summary>The sum of the shopping list, without its lines.</summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned.</param>
    /// <param name="level">Which of the prices are paid.</param>
    public static decimal BuildPrice(IReadOnlyList<NeededPart> parts, Stock stock, PriceLevel level)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (free, sum, articles) = (new FreeStock(stock), 0m, Fresh());
        for (var i = 0; i < parts.Count; i++)
        {
            var need = parts[i];
            var wanted = need.Quantity - free.Take(need);
            if (IsMeasured(need.Part))
                articles.Add(need.Part, wanted);
            else
                sum += wanted * need.Part.Info.PriceAt(level);
        }

        for (var i = 0; i < articles.Count; i++)
        {
            var (part, wanted) = articles[i];
            sum += Pricing.Total(wanted, 0, part.Info.PriceAt(level), part.Info.Pack);
        }

        return sum;
    }

    /// <summary>Present value of what must be bought or hired again within the years of use, in whole packs where it comes in packs.</summary>
    /// <param name="parts">What is needed.</param>
    /// <param name="stock">What is owned: it wears out like the rest, but what is hired else is never hired.</param>
    /// <param name="terms">Prices, interest, years.</param>
    public static decimal Replacements(IReadOnlyList<NeededPart> parts, Stock stock, MoneyTerms terms)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(terms);
        var (sum, articles) = (0.0, Fresh());
        for (var i = 0; i < parts.Count; i++)
        {
            if (!ComesAgain(parts[i], stock, terms))
                continue;
            if (IsMeasured(parts[i].Part))
                articles.Add(parts[i].Part, parts[i].Quantity);
            else
                sum += Again(parts[i].Part.Info, parts[i].Quantity, terms);
        }

        for (var i = 0; i < articles.Count; i++)
            sum += Again(articles[i].Part.Info, Pricing.Bought(articles[i].Wanted, articles[i].Part.Info.Pack), terms);
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
            .Select(p => (p.Part.Name, p.Part.Info, Price: Pricing.Total(p.Quantity, 0, p.Part.Info.PriceAt(terms.Prices), p.Part.Info.Pack)))
            .Select(p => new Wear(p.Name, p.Info.LifeYears, p.Price))
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

    private static bool IsMeasured(IPart part) => !part.Info.Unit.IsWhole();

    private static double Again(PartInfo info, decimal quantity, MoneyTerms terms) =>
        (double)(quantity * info.PriceAt(terms.Prices)) * PresentValue.OfReplacements(terms.Interest, info.LifeYears, terms.Years);

    private static ArticleSums Fresh()
    {
        var sums = kept ??= new();
        sums.Clear();
        return sums;
    }

    // What outlives the years of use is bought once, and who owns what others hire never hires it.
    private static bool ComesAgain(NeededPart need, Stock stock, MoneyTerms terms) =>
        need.Part.Info.LifeYears < terms.Years && !(need.IsHired && stock.QuantityOf(need.Part.Id) >= need.Quantity);

    private static decimal Cents(double amount) => decimal.Round((decimal)amount, 2, MidpointRounding.AwayFromZero);
}
