using System.Text.Json.Serialization;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Checks;

/// <summary>One rule a layout must meet, and by how much it meets it.</summary>
public sealed record Check
{
    private readonly FormattableString? words;
    private string? sentence;

    /// <summary>A check in words that stand already.</summary>
    [JsonConstructor]
    public Check(string id, string title, bool passed, double margin, string sentence, string source) : this(id, title, passed, margin, source) => this.sentence = sentence;

    private Check(string id, string title, bool passed, double margin, FormattableString words, string source) : this(id, title, passed, margin, source) => this.words = words;

    private Check(string id, string title, bool passed, double margin, string source) => (Id, Title, Passed, Margin, Source) = (id, title, passed, margin, source);

    /// <summary>Short fixed name, for instance "drive-torque".</summary>
    public string Id { get; }

    /// <summary>What is checked, in a few plain words.</summary>
    public string Title { get; }

    /// <summary>True when the rule is met.</summary>
    public bool Passed { get; }

    /// <summary>Share of the allowance that is left: 0.25 = a quarter to spare, below 0 = missed by that share.</summary>
    public double Margin { get; }

    /// <summary>What was found, in one plain sentence with its numbers.</summary>
    public string Sentence => sentence ??= Written.Sentence(words!);

    /// <summary>Where the rule or the formula comes from.</summary>
    public string Source { get; }

    /// <summary>A check whose sentence is put into words when it is first read: a search makes millions of checks and reads few.</summary>
    public static Check Of(string id, string title, bool passed, double margin, FormattableString words, string source) => new(id, title, passed, margin, words, source);

    /// <inheritdoc/>
    public bool Equals(Check? other) =>
        other is not null && (Id, Title, Passed, Margin, Sentence, Source).Equals((other.Id, other.Title, other.Passed, other.Margin, other.Sentence, other.Source));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Passed, Margin, Sentence);
}
