using DesignSearch.Season;

namespace DesignSearch.Layouts.Design;

/// <summary>One figure of a layout that may be otherwise.</summary>
/// <param name="What">What is otherwise, in plain words.</param>
/// <param name="Change">The plant with that figure changed.</param>
public sealed record SensitivityCase(string What, Func<Installation, Installation> Change);
