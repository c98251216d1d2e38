using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>One of many layouts.</summary>
/// <param name="Name">How it is told from the others: the name of its file, what its row says, or the number of the row.</param>
/// <param name="Layout">The layout.</param>
public sealed record NamedLayout(string Name, Layout Layout);
