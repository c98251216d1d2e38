namespace DesignSearch.Parts.Catalogues;

/// <summary>What a catalogue lacks because it could not be read.</summary>
internal sealed class SpoiltRows
{
    /// <summary>Rows with a fault, by their id.</summary>
    public Dictionary<string, PartKind> Rows { get; } = new(StringComparer.Ordinal);

    /// <summary>Kinds of which nobody knows what else there should be.</summary>
    public HashSet<PartKind> Kinds { get; } = [];

    /// <summary>True where a whole folder is missing.</summary>
    public bool All { get; set; }
}
