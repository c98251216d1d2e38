namespace DesignSearch.Runs.Starting;

/// <summary>One question about a case. Every one has a usual answer, so that nobody is held up by what they do not know.</summary>
public sealed record Question
{
    /// <summary>The question after the answers before it, its unit at the end.</summary>
    public required Func<NewCase, string> Text { get; init; }

    /// <summary>How to find it out, said to those who do not know.</summary>
    public required string WhereFrom { get; init; }

    /// <summary>A small drawing above it, a line each; none where it would not help.</summary>
    public IReadOnlyList<string> Picture { get; init; } = [];

    /// <summary>The answer that stands in the scenario already, as one would type it; null where it is begun anew or stands there in another way.</summary>
    public required Func<NewCase, string?> Standing { get; init; }

    /// <summary>The usual answer.</summary>
    public required Func<NewCase, string> Usual { get; init; }

    /// <summary>Takes an answer; returns what was expected where it is none, else null.</summary>
    public required Func<NewCase, string, string?> Take { get; init; }

    /// <summary>Whether it is asked at all after the answers before it.</summary>
    public Func<NewCase, bool> IsAsked { get; init; } = _ => true;

    /// <summary>The line that is marked where the answer was not known.</summary>
    public required (string Table, string Key) Line { get; init; }
}
