namespace DesignSearch.Season.House;

/// <summary>What a kind of source does with the house's doors; what nobody uses costs nothing.</summary>
internal enum DoorUse
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Gives heat to the inner surface of the cover that does not hang on its temperature at the end of the step.</summary>
    InnerSource,

    /// <summary>Gives and takes heat anywhere that does not hang on a node's temperature at the end of the step.</summary>
    Sources,

    /// <summary>Couples to nodes as well.</summary>
    Conductances,
}
