namespace DesignSearch.Layouts.Design.Choices;

/// <summary>Choices made so far; read by <see cref="ChoicesExtensions"/>.</summary>
public interface IChoices
{
    /// <summary>The list that they are made from.</summary>
    ChoiceSet Set { get; }

    /// <summary>Value of a choice.</summary>
    ChoiceValue ValueOf(Choice choice);
}
