namespace DesignSearch.Layouts.Design.Choices;

/// <summary>What a choice picks.</summary>
public enum ChoiceKind
{
    /// <summary>A part of the catalogue, by its id, or "none".</summary>
    Part,

    /// <summary>A number.</summary>
    Number,
}
