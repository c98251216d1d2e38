namespace DesignSearch.Season.House;

/// <summary>What a kind of source does with the house's doors; what nobody uses costs nothing.</summary>
internal enum DoorUse
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Gives and takes heat that does not hang on a node's temperature at the end of the step.</summary>
    Sources,

    /// <summary>Couples to nodes as well.</summary>
    Conductances,
}
