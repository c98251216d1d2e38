using System.Globalization;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>The value of one choice: an id (or "none") or a number.</summary>
/// <param name="Id">Part id; empty for a number.</param>
/// <param name="Number">Number; 0 for a part.</param>
public readonly record struct ChoiceValue(string Id, double Number)
{
    /// <summary>The word that stands for "leave it out".</summary>
    public const string NoneWord = "none";

    /// <summary>Nothing chosen.</summary>
    public static ChoiceValue None { get; } = new(NoneWord, 0);

    /// <summary>The cheapest small part that serves, whichever that is.</summary>
    public static ChoiceValue Cheapest { get; } = new("cheapest", 0);

    /// <summary>True when a part is left out.</summary>
    public bool IsNone => Id == NoneWord;

    /// <summary>A part.</summary>
    public static ChoiceValue Part(string id) => new(id, 0);

    /// <summary>A number.</summary>
    public static ChoiceValue Of(double number) => new("", number);

    /// <summary>The value as a layout file shows it, without quotes.</summary>
    public override string ToString() => Id is { Length: > 0 } ? Id : Number.ToString("R", CultureInfo.InvariantCulture);
}
