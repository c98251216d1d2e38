using DesignSearch.Files;
using DesignSearch.Parts.Money;

namespace DesignSearch.Parts.Catalogues;

/// <summary>What every part has: name, price, life.</summary>
public sealed record PartInfo
{
    private const double LeastPack = 0.1;
    private const double LargestPack = 10_000;

    private const string PackWords =
        "How much a roll, coil, sheet, canister or bag holds, in the unit of the price; empty where any amount is sold";

    /// <summary>Short name, unique over the whole catalogue: small letters, digits and hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Name for the shopping list.</summary>
    public required string Name { get; init; }

    /// <summary>What the price is for.</summary>
    public required PartUnit Unit { get; init; }

    /// <summary>Usual price of one unit, to the cent, 0 or more.</summary>
    public required decimal Price { get; init; }

    /// <summary>Low price of one unit, at most the usual one.</summary>
    public required decimal PriceLow { get; init; }

    /// <summary>High price of one unit, at least the usual one.</summary>
    public required decimal PriceHigh { get; init; }

    /// <summary>Price of one unit second-hand; null where it is not to be had, or not to be trusted, second-hand.</summary>
    public decimal? PriceSecondHand { get; init; }

    /// <summary>
    /// How much a roll, coil, sheet, canister or bag holds, in the unit of its price, from 0.1 to 10000; null where it is sold by any amount.
    /// </summary>
    public decimal? Pack { get; init; }

    /// <summary>Years until it must be replaced, from 0.25 to 100.</summary>
    public required double LifeYears { get; init; }

    /// <summary>Hours to build one unit in, from 0 to 500.</summary>
    public required double LabourHours { get; init; }

    /// <summary>A plain sentence: what it is good for, where it goes, what to look out for.</summary>
    public required string Note { get; init; }

    /// <summary>Whether a pack may hold so much.</summary>
    /// <param name="pack">How much, in the unit of the price; null where any amount is sold.</param>
    public static bool IsPack(decimal? pack) => pack is null || (double)pack is >= LeastPack and <= LargestPack;

    /// <summary>One of the prices.</summary>
    /// <param name="level">Which one; second-hand is the usual price where there is no second-hand price.</param>
    public decimal PriceAt(PriceLevel level) => level switch
    {
        PriceLevel.Low => PriceLow,
        PriceLevel.High => PriceHigh,
        PriceLevel.SecondHand => PriceSecondHand ?? Price,
        _ => Price,
    };

    /// <summary>Reads the columns that all kinds share.</summary>
    /// <param name="cells">The row.</param>
    /// <param name="units">What the price of this kind may be for.</param>
    public static PartInfo Read(ICsvCells cells, IReadOnlyList<PartUnit> units) => new()
    {
        Id = cells.Slug("id", "Short name, unique over the whole catalogue"),
        Name = cells.Text("name", "Name for the shopping list"),
        Unit = cells.Word("unit", PartUnits.Words(units), "What the price is for"),
        Price = cells.Money("price", "Usual price of one unit"),
        PriceLow = cells.Money("price_low", "Low price of one unit, at most the usual one"),
        PriceHigh = cells.Money("price_high", "High price of one unit, at least the usual one"),
        PriceSecondHand = cells.MoneyIfAny("price_second_hand", "Price of one unit second-hand, empty where it is not to be had or not to be trusted"),
        Pack = units.Any(u => u.IsPacked()) ? (decimal?)cells.NumberIfAny("pack", LeastPack, LargestPack, PackWords) : null,
        LifeYears = cells.Number("life_years", 0.25, 100, "Years until it must be replaced"),
        LabourHours = cells.Number("labour_hours", 0, 500, "Hours to build one unit in"),
        Note = cells.Text("note", "A plain sentence: what it is good for, where it goes, what to look out for"),
    };
}
