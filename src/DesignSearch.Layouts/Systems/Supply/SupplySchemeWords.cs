namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>How the components of a supply are called in its pictures.</summary>
internal static class SupplySchemeWords
{
    public const string Board = "fuse board of the dwelling";
    public const string MainsBox = "mains box";
    public const string ControlBox = "control box";
}
