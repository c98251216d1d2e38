namespace DesignSearch.Layouts.Design;

/// <summary>One thing to dial in on the finished installation.</summary>
/// <param name="What">The control, in the words on its front.</param>
/// <param name="Value">The value with its unit.</param>
/// <param name="Reason">Why this value.</param>
public sealed record Setting(string What, string Value, string Reason);
