using DesignSearch.Layouts.Decide.Certify;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;

namespace DesignSearch.Runs.Store;

/// <summary>Everything a finished search leaves in <c>run.json</c>; charts, lists and the report are made from this alone.</summary>
public sealed record StoredRun
{
    /// <summary>Version of this file's format.</summary>
    public const int CurrentFormat = 7;

    /// <summary>Version of the format this file was written in.</summary>
    public required int FormatVersion { get; init; }

    /// <summary>Version of the program that wrote it.</summary>
    public required string ProgramVersion { get; init; }

    /// <summary>Every file that was read, with its hash.</summary>
    public required IReadOnlyList<StoredInput> Inputs { get; init; }

    /// <summary>How the search went.</summary>
    public required SearchRecord Search { get; init; }

    /// <summary>The scenario in the words of the report.</summary>
    public required ScenarioRecord Scenario { get; init; }

    /// <summary>What it came to.</summary>
    public required Judgement Judgement { get; init; }

    /// <summary>What is proved of the first answer; null where no proof was wanted.</summary>
    public Certificate? Certificate { get; init; }

    /// <summary>What that is worth.</summary>
    public required Weighing Weighing { get; init; }

    /// <summary>What could not be worked out, each in a sentence; empty where all could.</summary>
    public IReadOnlyList<string> Unmade { get; init; } = [];
}
