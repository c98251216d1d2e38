namespace DesignSearch.Parts.Catalogues;

/// <summary>Something with a price: a row of a catalogue.</summary>
public interface IPart
{
    /// <summary>The kind of part, for instance that of collectors.</summary>
    PartKind Kind { get; }

    /// <summary>What every part has: name, price, life.</summary>
    PartInfo Info { get; }

    /// <summary>Rules between the cells of its row, those of its price left out.</summary>
    IEnumerable<RowRule> Rules { get; }

    /// <summary>What it is rated for; null where its row does not say.</summary>
    /// <param name="rating">What is asked.</param>
    double? Bears(Rating rating);

    /// <summary>True for what works at mains voltage alone: without mains it is of no use.</summary>
    bool RunsOnMains { get; }

    /// <summary>Short name, unique over the whole catalogue.</summary>
    string Id => Info.Id;

    /// <summary>Name for the shopping list.</summary>
    string Name => Info.Name;

    /// <summary>What the price is for.</summary>
    PartUnit Unit => Info.Unit;

    /// <summary>Usual price of one unit, to the cent.</summary>
    decimal Price => Info.Price;
}
