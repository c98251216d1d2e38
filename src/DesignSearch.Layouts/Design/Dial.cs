namespace DesignSearch.Layouts.Design;

/// <summary>What is dialled in on a line of the bill: without the line there is nothing to dial.</summary>
/// <param name="On">What the line is for.</param>
/// <param name="Setting">What is dialled in on it.</param>
public sealed record Dial(Purpose On, Setting Setting);
