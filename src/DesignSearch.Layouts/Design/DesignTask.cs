using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Design;

/// <summary>What a system is designed for.</summary>
/// <param name="Scenario">Place, house, money.</param>
/// <param name="Layout">What was chosen.</param>
/// <param name="Shelf">Parts that follow from others.</param>
public sealed record DesignTask(Scenario Scenario, Layout Layout, PartShelf Shelf);
