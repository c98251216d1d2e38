namespace DesignSearch.Layouts;

/// <summary>One rule a layout must meet, and by how much it meets it.</summary>
/// <param name="Id">Short fixed name, for instance "torque-storm".</param>
/// <param name="Title">What is checked, in a few plain words.</param>
/// <param name="Passed">True when the rule is met.</param>
/// <param name="Margin">Share of the allowance that is left: 0.25 = a quarter to spare, below 0 = missed by that share.</param>
/// <param name="Sentence">What was found, in one plain sentence with its numbers.</param>
/// <param name="Source">Where the rule or the formula comes from.</param>
public sealed record Check(string Id, string Title, bool Passed, double Margin, string Sentence, string Source);
