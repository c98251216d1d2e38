namespace DesignSearch.Layouts.Design.Choices;

/// <summary>Reads the choices made so far.</summary>
public interface IChoiceReader
{
    /// <summary>Value of a choice by its key.</summary>
    ChoiceValue this[string key] { get; }
}
