using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>Gathers what a layout needs, and what the catalogue could not give.</summary>
/// <param name="catalogue">Where parts that follow from others are picked, the cheapest that serves.</param>
internal sealed class Needs(Catalogue catalogue)
{
    private readonly List<NeededPart> parts = [];
    private readonly List<string> missing = [];

    public Catalogue Catalogue => catalogue;

    public IReadOnlyList<NeededPart> Parts => parts;

    /// <summary>What no part of the catalogue serves, in plain words.</summary>
    public IReadOnlyList<string> Missing => missing;

    public void Add(IPart part, double quantity, string system, string why, string where)
    {
        // Pieces come whole; what is cut is bought to the tenth.
        var amount = part.Unit is PartUnit.Piece or PartUnit.Set ? (decimal)Math.Ceiling(quantity - 1e-9) : Math.Ceiling((decimal)quantity * 10 - 1e-6m) / 10;
        if (amount > 0)
            parts.Add(new(part, amount, system, why, where));
    }

    /// <summary>Price of everything at the catalogue's usual prices, nothing owned.</summary>
    public decimal Price => parts.Sum(p => p.Quantity * p.Part.Price);

    public void AddAll(Needs other)
    {
        parts.AddRange(other.parts);
        missing.AddRange(other.missing);
    }

    /// <summary>Adds the cheapest small part of a role; a voltage above 0 must fit.</summary>
    public void Small(SmallPartRole role, double quantity, string system, string why, string where, double volts = 0)
    {
        var fitting = catalogue.SmallParts.Where(p => p.Role == role && (volts == 0 || p.Volts == 0 || p.Volts == volts)).OrderBy(p => p.Price).ThenBy(p => p.Id, StringComparer.Ordinal).FirstOrDefault();
        Pick(fitting, $"a small part of role '{role}'{(volts > 0 ? FormattableString.Invariant($" for {volts:0} V") : "")}", quantity, system, why, where);
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
