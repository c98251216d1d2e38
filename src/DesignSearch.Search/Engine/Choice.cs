namespace DesignSearch.Search.Engine;

/// <summary>How a point is chosen for evaluation. The first three are arms that compete for the next choice.</summary>
internal enum Choice
{
    /// <summary>As it was proposed.</summary>
    Plain,

    /// <summary>The one of several that the model thinks best.</summary>
    Ranked,

    /// <summary>By a climb in the model.</summary>
    Climbed,

    /// <summary>By the fresh start beside the search.</summary>
    Fresh,

    /// <summary>Drawn anywhere.</summary>
    Drawn,
}
