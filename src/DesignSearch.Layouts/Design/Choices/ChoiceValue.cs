using System.Globalization;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>The value of one choice: a part (or "none"), or a number. Two values are equal when a layout file would show the same.</summary>
public readonly struct ChoiceValue : IEquatable<ChoiceValue>
{
    /// <summary>The word that stands for "leave it out".</summary>
    public const string NoneWord = "none";

    private ChoiceValue(string id, double number, IPart? part) => (Id, Number, Part) = (id, number, part);

    /// <summary>Nothing chosen.</summary>
    public static ChoiceValue None { get; } = new(NoneWord, 0, null);

    /// <summary>The cheapest small part that serves, whichever that is.</summary>
    public static ChoiceValue Cheapest { get; } = new("cheapest", 0, null);

    /// <summary>Part id, or the word that stands for one; empty for a number.</summary>
    public string Id { get; }

    /// <summary>Number; 0 for a part.</summary>
    public double Number { get; }

    /// <summary>The part; null for a number, for "none" and for the cheapest that serves.</summary>
    public IPart? Part { get; }

    /// <summary>True when a part is left out.</summary>
    public bool IsNone => Id == NoneWord;

    /// <summary>Whether two are equal.</summary>
    public static bool operator ==(ChoiceValue left, ChoiceValue right) => left.Equals(right);

    /// <summary>Whether two differ.</summary>
    public static bool operator !=(ChoiceValue left, ChoiceValue right) => !left.Equals(right);

    /// <summary>A part.</summary>
    public static ChoiceValue Of(IPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(part.Id, 0, part);
    }

    /// <summary>A number.</summary>
    public static ChoiceValue Of(double number) => new("", number, null);

    /// <inheritdoc/>
    public bool Equals(ChoiceValue other) => Number == other.Number && Id == other.Id;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ChoiceValue other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Number);

    /// <summary>The value as a layout file shows it, without quotes.</summary>
    public override string ToString() => Id is { Length: > 0 } ? Id : Number.ToString("R", CultureInfo.InvariantCulture);
}
