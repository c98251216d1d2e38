using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Money;

/// <summary>What the builder already owns: it costs nothing up to its quantity.</summary>
public sealed class Stock
{
    private const double MostOwned = 1e6;

    private readonly Dictionary<string, decimal> quantities;

    private Stock(Dictionary<string, decimal> quantities) => this.quantities = quantities;

    /// <summary>Nothing owned.</summary>
    public static Stock Empty { get; } = new([]);

    /// <summary>The columns of a stock file.</summary>
    public static IReadOnlyList<CsvColumn> Columns => CsvColumns.Of(ReadRow);

    /// <summary>The ids of what is owned, sorted.</summary>
    public IReadOnlyList<string> Ids => [.. quantities.Keys.Order(StringComparer.Ordinal)];

    /// <summary>How much of a part is owned, in the part's unit; 0 for a part that is not listed.</summary>
    /// <param name="id">Id of the part.</param>
    public decimal QuantityOf(string id) => quantities.GetValueOrDefault(id);

    /// <summary>Reads a file with the columns id and quantity, and refuses ids that the catalogue lacks.</summary>
    /// <param name="path">The file.</param>
    /// <param name="catalogue">The catalogue whose parts may be owned; null to take any id.</param>
    /// <param name="faults">Receives everything that is wrong.</param>
    public static Stock Load(string path, Catalogue? catalogue, FaultList faults)
    {
        var quantities = new Dictionary<string, decimal>(StringComparer.Ordinal);
        foreach (var entry in CsvTable.ReadFile(path, ReadRow, faults))
        {
            var (line, column) = entry.PlaceOf("id");
            var (id, quantity) = entry.Value;
            if (catalogue is not null && !catalogue.TryFind<IPart>(id, out _) && !catalogue.MayLack(id))
                faults.Add(path, line, column, id, "id: the id of a part of the catalogue" + NearWord.Hint(id, catalogue.All.Select(p => p.Id)));
            else if (!quantities.TryAdd(id, quantity))
                faults.Add(path, line, column, id, "id: each part once, but this one stands here twice");
        }

        return new(quantities);
    }

    /// <summary>A stock made in memory.</summary>
    /// <param name="owned">Id and quantity of each part, 0 or more.</param>
    public static Stock Of(params IEnumerable<(string Id, decimal Quantity)> owned) => new(owned.ToDictionary(o => o.Id, o => o.Quantity, StringComparer.Ordinal));

    private static (string Id, decimal Quantity) ReadRow(ICsvCells cells) =>
        (cells.Slug("id", "Id of the part in the catalogue"), (decimal)cells.Number("quantity", 0, MostOwned, "How much of it is owned, in the unit of its price"));
}
