namespace DesignSearch.Layouts.Design;

/// <summary>What may go wrong in a night.</summary>
public enum Mishap
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The mains fail.</summary>
    PowerCut,

    /// <summary>Nobody draws the night cover.</summary>
    CoverLeftOpen,

    /// <summary>Nobody brushes the snow off roof and collector.</summary>
    SnowLeft,
}
