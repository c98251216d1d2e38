namespace DesignSearch.Layouts.Design;

/// <summary>What a scenario says of one system beside the choices.</summary>
public abstract record SystemWish;
