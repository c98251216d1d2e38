using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design;

/// <summary>Gathers what a layout needs, and what the catalogue could not give.</summary>
/// <param name="catalogue">Where parts are found by their id.</param>
/// <param name="level">Which of the prices are paid.</param>
public sealed class Needs(Catalogue catalogue, PriceLevel level)
{
    private List<NeededPart> parts = new(64);
    private List<string> missing = [];

    /// <summary>Parts that follow from others: the cheapest that serves is picked.</summary>
    public PartShelf Shelf { get; } = PartShelf.Of(catalogue, level);

    /// <summary>Everything needed so far.</summary>
    public IReadOnlyList<NeededPart> Parts => parts;

    /// <summary>What no part of the catalogue serves, in plain words.</summary>
    public IReadOnlyList<string> Missing => missing;

    /// <summary>Adds a part; nothing where the quantity is 0.</summary>
    /// <param name="part">The part.</param>
    /// <param name="quantity">How much, in its unit.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="duties">What it meets in the states of the plant.</param>
    public void Add(IPart part, double quantity, Purpose purpose, params ReadOnlySpan<Duty> duties) =>
        Add(part, quantity, purpose, default, duties);

    /// <summary>Adds a part with the cable that joins it to its box.</summary>
    /// <param name="part">The part.</param>
    /// <param name="quantity">How much, in its unit.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="lead">The cable.</param>
    /// <param name="duties">What it meets in the states of the plant.</param>
    public void Add(IPart part, double quantity, Purpose purpose, Lead lead, ReadOnlySpan<Duty> duties)
    {
        var amount = Bought(part, quantity);
        if (amount > 0)
            parts.Add(new(part, amount, purpose, duties) { Lead = lead });
    }

    /// <summary>Adds the cheapest small part of a role that is hired, or notes that the catalogue lacks it.</summary>
    /// <param name="role">The task.</param>
    /// <param name="quantity">How much, in the part's unit.</param>
    /// <param name="purpose">What for and where.</param>
    public void Hire(SmallPartRole role, double quantity, Purpose purpose)
    {
        if (Shelf.Cheapest(role) is { } part)
            parts.Add(new(part, Bought(part, quantity), purpose) { IsHired = true });
        else
            missing.Add(NeedsWords.SmallPart(role, 0, 0));
    }

    /// <summary>What an hour of a licensed person costs; null for the catalogue's price.</summary>
    public decimal? LicensedRate { get; init; }

    /// <summary>Adds hours of a licensed person, or notes that the catalogue has no price for them.</summary>
    /// <param name="hours">How many; nothing where it is 0.</param>
    /// <param name="purpose">What for and where.</param>
    public void Licensed(double hours, Purpose purpose)
    {
        if (hours <= 0)
            return;
        if (Shelf.Cheapest(SmallPartRole.LicensedHour) is not { } hour)
            missing.Add(NeedsWords.SmallPart(SmallPartRole.LicensedHour, 0, 0));
        else
            Add(LicensedRate is { } rate ? hour with { Info = At(hour.Info, rate) } : hour, hours, purpose);
    }

    private static PartInfo At(PartInfo info, decimal price) =>
        info with { Price = price, PriceLow = price, PriceHigh = price, PriceSecondHand = null };

    /// <summary>Price of everything, what is owned left out.</summary>
    public decimal Price(Stock stock) => Pricer.BuildPrice(parts, stock, level);

    /// <summary>How much must be bought: pieces come whole, what is cut is bought to the tenth.</summary>
    public static decimal Bought(IPart part, double quantity)
    {
        var bought = part.Unit.IsWhole() ? (decimal)Math.Ceiling(quantity - 1e-9) : Math.Ceiling((decimal)quantity * 10 - 1e-6m) / 10;
        // Nothing, rounded up from just below, is a zero with a minus, which counts as negative.
        return bought == 0 ? 0 : bought;
    }

    /// <summary>No needs yet, from the same catalogue at the same prices.</summary>
    public Needs Fresh() => new(catalogue, level) { LicensedRate = LicensedRate };

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

    /// <summary>Adds the cheapest small part of a role that serves, or notes that the catalogue lacks it.</summary>
    /// <param name="role">The task.</param>
    /// <param name="quantity">How much, in the part's unit.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="volts">Voltage that must fit [V]; 0 for any.</param>
    /// <param name="amperes">Current that must be borne [A]; 0 for any.</param>
    public void Small(SmallPartRole role, double quantity, Purpose purpose, double volts = 0, double amperes = 0)
    {
        if (Shelf.Cheapest(role, volts, amperes) is { } part)
            Add(part, quantity, purpose);
        else
            missing.Add(NeedsWords.SmallPart(role, volts, amperes));
    }

    /// <summary>
    /// Adds the cheapest small part of a role that bears what it will meet. Where none does the cheapest is added, so that a check can name
    /// it; where there is none at all, or none of that voltage, the lack is noted.
    /// </summary>
    /// <param name="role">The task.</param>
    /// <param name="quantity">How much, in the part's unit.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="duties">What it meets in the states of the plant.</param>
    /// <param name="volts">Voltage that must fit [V]; 0 for any.</param>
    /// <param name="lead">The cable that joins it to its box.</param>
    public void Small(
        SmallPartRole role, double quantity, Purpose purpose, ReadOnlySpan<Duty> duties, double volts = 0, Lead lead = default)
    {
        if ((Shelf.Bearing(role, duties, volts) ?? Shelf.Cheapest(role, volts)) is { } part)
            Add(part, quantity, purpose, lead, duties);
        else
            missing.Add(NeedsWords.SmallPart(role, volts, 0));
    }

    /// <summary>
    /// Adds what switches a load: the cheapest of its role whose contact bears it. Where none does, the cheapest works the coil of a relay
    /// that does; where no relay does either it is added all the same, so that a check can name it.
    /// </summary>
    /// <param name="role">The task.</param>
    /// <param name="quantity">How many.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="load">What each switches, at its start.</param>
    /// <param name="volts">Voltage of the control [V].</param>
    /// <param name="lead">The cable that joins it to its box.</param>
    public void Contact(SmallPartRole role, double quantity, Purpose purpose, Duty load, double volts, Lead lead = default)
    {
        var isLow = volts < SupplyPlan.MainsVolts;
        if (isLow && Shelf.Bearing(role, [load], volts) is null && Shelf.Bearing(SmallPartRole.Relay, [load], volts) is { } relay)
        {
            Small(role, quantity, purpose, [Duty.Current(load.State, relay.Watts / volts)], volts, lead);
            Add(relay, quantity, NeedsWords.RelayBetween(purpose), load);
        }
        else
        {
            Small(role, quantity, purpose, [load], volts, lead);
        }
    }

    /// <summary>Adds the small part that was chosen; the cheapest of its role where none was named.</summary>
    /// <param name="chosen">The part; null for the cheapest.</param>
    /// <param name="role">The task.</param>
    /// <param name="quantity">How much, in the part's unit.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="volts">Voltage that must fit where none was named [V]; 0 for any.</param>
    /// <param name="duties">What it meets in the states of the plant.</param>
    public void Chosen(
        SmallPart? chosen, SmallPartRole role, double quantity, Purpose purpose, double volts = 0, params ReadOnlySpan<Duty> duties)
    {
        if (chosen is not null)
            Add(chosen, quantity, purpose, duties);
        else
            Small(role, quantity, purpose, duties, volts);
    }

    /// <summary>Adds a part that was looked for, or notes what the catalogue lacks.</summary>
    /// <param name="found">The part; null where nothing serves.</param>
    /// <param name="wanted">What was looked for; put into words only where it is missing.</param>
    /// <param name="quantity">How much, in the part's unit.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="duties">What it meets in the states of the plant.</param>
    public void Pick(IPart? found, FormattableString wanted, double quantity, Purpose purpose, params ReadOnlySpan<Duty> duties)
    {
        if (found is null)
            missing.Add(Written.Sentence(wanted));
        else
            Add(found, quantity, purpose, duties);
    }
}
