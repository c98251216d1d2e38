namespace DesignSearch.Parts.Catalogues;

/// <summary>What a price is for.</summary>
public enum PartUnit
{
    /// <summary>One piece.</summary>
    Piece,

    /// <summary>One metre.</summary>
    Metre,

    /// <summary>One square metre.</summary>
    SquareMetre,

    /// <summary>One cubic metre.</summary>
    CubicMetre,

    /// <summary>One litre.</summary>
    Litre,

    /// <summary>One set of things that are sold together.</summary>
    Set,

    /// <summary>One kilogram.</summary>
    Kilogram,

    /// <summary>One hour of somebody's work.</summary>
    Hour,
}
