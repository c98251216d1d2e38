using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>Gathers what a layout needs, and what the catalogue could not give.</summary>
/// <param name="catalogue">Where parts that follow from others are picked, the cheapest that serves.</param>
/// <param name="level">Which of the prices are paid.</param>
internal sealed class Needs(Catalogue catalogue, PriceLevel level)
{
    private const double MainsRating = 400;

    private IReadOnlyList<PricedCable>? lowCables;
    private List<NeededPart> parts = [];
    private List<string> missing = [];

    public Catalogue Catalogue => catalogue;

    public IReadOnlyList<NeededPart> Parts => parts;

    /// <summary>Outdoor cables for extra-low voltage, the cheapest first.</summary>
    public IReadOnlyList<PricedCable> LowCables => lowCables ??= [.. catalogue.Cables.Where(c => c.IsOutdoor && c.MaxVolts < MainsRating)
        .Select(c => new PricedCable(c, CopperResistance.OhmPerM(c.SectionMm2, c.ConductorClass), PriceOf(c))).OrderBy(c => c.Price).ThenBy(c => c.Cable.Id, StringComparer.Ordinal)];

    /// <summary>What no part of the catalogue serves, in plain words.</summary>
    public IReadOnlyList<string> Missing => missing;

    public void Add(IPart part, double quantity, string system, string why, string where)
    {
        var amount = Bought(part, quantity);
        if (amount > 0)
            parts.Add(new(part, amount, system, why, where));
    }

    /// <summary>The price of a part that is paid.</summary>
    public decimal PriceOf(IPart part) => part.Info.PriceAt(level);

    /// <summary>The cheapest of some parts, the first id where two cost the same; null of none.</summary>
    public T? Cheapest<T>(IEnumerable<T> parts) where T : class, IPart
    {
        T? best = null;
        foreach (var part in parts)
        {
            if (best is null || PriceOf(part).CompareTo(PriceOf(best)) is var by && (by < 0 || (by == 0 && string.CompareOrdinal(part.Id, best.Id) < 0)))
                best = part;
        }

        return best;
    }

    /// <summary>Price of everything, what is owned left out.</summary>
    public decimal Price(Stock stock) => Pricing.Total(Pricer.Bill(parts, stock, level));

    /// <summary>How much must be bought: pieces come whole, what is cut is bought to the tenth.</summary>
    public static decimal Bought(IPart part, double quantity) =>
        part.Unit is PartUnit.Piece or PartUnit.Set ? (decimal)Math.Ceiling(quantity - 1e-9) : Math.Ceiling((decimal)quantity * 10 - 1e-6m) / 10;

    /// <summary>The same needs, to be added to by themselves.</summary>
    public Needs Copy()
    {
        var copy = new Needs(Catalogue, level);
        copy.TakeOver(this);
        copy.lowCables = LowCables;
        return copy;
    }

    /// <summary>Becomes a copy of other needs.</summary>
    public void TakeOver(Needs other)
    {
        (parts, missing) = ([.. other.parts], [.. other.missing]);
    }

    /// <summary>Adds the cheapest small part of a role; a voltage above 0 must fit, and a current that it carries or switches must be borne.</summary>
    public void Small(SmallPartRole role, double quantity, string system, string why, string where, double volts = 0, double amperes = 0)
    {
        var fitting = Cheapest(catalogue.SmallParts.Where(p => p.Role == role && (volts == 0 || p.Volts == 0 || p.Volts == volts) && (amperes == 0 || p.RatedA == 0 || p.RatedA >= amperes - 1e-9)));
        Pick(fitting, $"a small part of role '{role}'{(volts > 0 ? FormattableString.Invariant($" for {volts:0} V") : "")}{(amperes > 0 ? FormattableString.Invariant($" and {amperes:0.0} A") : "")}", quantity, system, why, where);
    }

    /// <summary>Adds the small part that was chosen; the cheapest of its role where none was named.</summary>
    public void Chosen(ChoiceValue chosen, SmallPartRole role, double quantity, string system, string why, string where, double volts = 0)
    {
        if (catalogue.TryFind<SmallPart>(chosen.Id, out var part))
            Add(part, quantity, system, why, where);
        else
            Small(role, quantity, system, why, where, volts);
    }

    /// <summary>Adds a part that was looked for, or notes what the catalogue lacks.</summary>
    public void Pick(IPart? found, string wanted, double quantity, string system, string why, string where)
    {
        if (found is null)
            missing.Add(wanted);
        else
            Add(found, quantity, system, why, where);
    }
}
