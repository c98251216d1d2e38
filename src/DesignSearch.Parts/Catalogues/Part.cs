using System.Text.Json.Serialization;

namespace DesignSearch.Parts.Catalogues;

/// <summary>What the records of all kinds have in common.</summary>
/// <param name="Info">Name, price and life.</param>
public abstract record Part(PartInfo Info) : IPart
{
    /// <inheritdoc/>
    [JsonIgnore]
    public abstract PartKind Kind { get; }

    /// <inheritdoc cref="IPart.Kind"/>
    [JsonPropertyName("kind")]
    public string KindName => Kind.Name;

    /// <inheritdoc/>
    [JsonIgnore]
    public virtual IEnumerable<RowRule> Rules => [];

    /// <inheritdoc/>
    [JsonIgnore]
    public virtual bool RunsOnMains => false;

    /// <inheritdoc/>
    public virtual double? Bears(Rating rating) => null;

    /// <inheritdoc cref="IPart.Id"/>
    public string Id => Info.Id;

    /// <inheritdoc cref="IPart.Name"/>
    public string Name => Info.Name;

    /// <inheritdoc cref="IPart.Unit"/>
    public PartUnit Unit => Info.Unit;

    /// <inheritdoc cref="IPart.Price"/>
    public decimal Price => Info.Price;
}
