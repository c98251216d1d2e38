namespace DesignSearch.Parts.Catalogues;

/// <summary>What the records of all kinds have in common.</summary>
/// <param name="Info">Name, price and life.</param>
public abstract record Part(PartInfo Info) : IPart
{
    /// <inheritdoc/>
    public abstract string Kind { get; }

    /// <inheritdoc cref="IPart.Id"/>
    public string Id => Info.Id;

    /// <inheritdoc cref="IPart.Name"/>
    public string Name => Info.Name;

    /// <inheritdoc cref="IPart.Unit"/>
    public PartUnit Unit => Info.Unit;

    /// <inheritdoc cref="IPart.Price"/>
    public decimal Price => Info.Price;
}
