namespace DesignSearch.Layouts.Design.Choices;

/// <summary>A choice with the levels a scenario allows; one level means it is fixed.</summary>
/// <param name="Choice">The choice.</param>
/// <param name="Levels">Levels, one or more, in order.</param>
public sealed record VariedChoice(Choice Choice, IReadOnlyList<ChoiceValue> Levels);
