using DesignSearch.Files;

namespace DesignSearch.Parts.Catalogues;

/// <summary>A kind of part: its file and how a row of it is read. Each record of a part has its own; which kinds there are, those say who use them.</summary>
/// <param name="Name">The noun, for instance <c>collector</c>.</param>
/// <param name="File">The file in a catalogue's folder.</param>
/// <param name="ReadRow">Reads a row and asks for every column.</param>
public sealed record PartKind(string Name, string File, Func<ICsvCells, IPart> ReadRow)
{
    /// <inheritdoc/>
    public bool Equals(PartKind? other) => other is not null && Name == other.Name;

    /// <inheritdoc/>
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);

    /// <summary>The columns of the file, those that all kinds share first.</summary>
    public IReadOnlyList<CsvColumn> Columns => CsvColumns.Of(ReadRow);
}
