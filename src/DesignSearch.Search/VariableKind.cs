namespace DesignSearch.Search;

/// <summary>What the levels of a variable mean to one another.</summary>
public enum VariableKind
{
    /// <summary>A real number between two bounds.</summary>
    Real,

    /// <summary>Levels in an order: neighbours are alike.</summary>
    Ordered,

    /// <summary>Levels without an order.</summary>
    Category,
}
