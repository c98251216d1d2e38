using DesignSearch.Layouts.Assess.Money;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>Gathers what a layout needs, and what the catalogue could not give.</summary>
/// <param name="catalogue">Where parts are found by their id.</param>
/// <param name="level">Which of the prices are paid.</param>
internal sealed class Needs(Catalogue catalogue, PriceLevel level)
{
    private List<NeededPart> parts = new(64);
    private List<string> missing = [];

    public Catalogue Catalogue => catalogue;

    /// <summary>Parts that follow from others: the cheapest that serves is picked.</summary>
    public PartShelf Shelf { get; } = PartShelf.Of(catalogue, level);

    public IReadOnlyList<NeededPart> Parts => parts;

    /// <summary>What no part of the catalogue serves, in plain words.</summary>
    public IReadOnlyList<string> Missing => missing;

    public void Add(IPart part, double quantity, string system, string why, string where)
    {
        var amount = Bought(part, quantity);
        if (amount > 0)
            parts.Add(new(part, amount, system, why, where));
    }

    /// <summary>Price of everything, what is owned left out.</summary>
    public decimal Price(Stock stock) => Pricer.BuildPrice(parts, stock, level);

    /// <summary>How much must be bought: pieces come whole, what is cut is bought to the tenth.</summary>
    public static decimal Bought(IPart part, double quantity) =>
        part.Unit is PartUnit.Piece or PartUnit.Set ? (decimal)Math.Ceiling(quantity - 1e-9) : Math.Ceiling((decimal)quantity * 10 - 1e-6m) / 10;

    /// <summary>No needs yet, from the same catalogue at the same prices.</summary>
    public Needs Fresh() => new(catalogue, level);

    /// <summary>Adds all that others need and lack.</summary>
    public void AddAll(Needs others)
    {
        parts.AddRange(others.parts);
        missing.AddRange(others.missing);
    }

    /// <summary>The same needs, to be added to by themselves.</summary>
    public Needs Copy()
    {
        var copy = Fresh();
        copy.TakeOver(this);
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
        foreach (var part in Shelf.Small(role))
        {
            if ((volts != 0 && part.Volts != 0 && part.Volts != volts) || (amperes != 0 && part.RatedA != 0 && !(part.RatedA >= amperes - 1e-9)))
                continue;
            Add(part, quantity, system, why, where);
            return;
        }

        missing.Add(FormattableString.Invariant($"a small part of role '{role}'{(volts > 0 ? FormattableString.Invariant($" for {volts:0} V") : "")}{(amperes > 0 ? FormattableString.Invariant($" and {amperes:0.0} A") : "")}"));
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
    /// <param name="found">The part; null where nothing serves.</param>
    /// <param name="wanted">What was looked for; put into words only where it is missing.</param>
    /// <param name="quantity">How much, in the part's unit.</param>
    /// <param name="system">Subsystem.</param>
    /// <param name="why">Why it is needed.</param>
    /// <param name="where">Where it goes.</param>
    public void Pick(IPart? found, FormattableString wanted, double quantity, string system, string why, string where)
    {
        if (found is null)
            missing.Add(FormattableString.Invariant(wanted));
        else
            Add(found, quantity, system, why, where);
    }
}
