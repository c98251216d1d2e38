using DesignSearch.Files;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Searching;

/// <summary>What a search is asked to do; null leaves a number to the scenario.</summary>
/// <param name="Folder">The run.</param>
/// <param name="Seed">Seed of every random number.</param>
/// <param name="Evaluations">Layouts to simulate at most.</param>
/// <param name="Minutes">Time to stop after; null = none.</param>
/// <param name="Threads">Threads to work on; the result does not depend on it.</param>
/// <param name="Resume">Take up the journal of a search that was broken off.</param>
/// <param name="Force">Begin anew over a finished run or an old journal.</param>
/// <param name="ProgramVersion">Version of the program, for the files.</param>
/// <param name="Holder">Who searches, told to another process that wants the same folder.</param>
public sealed record SearchRequest(
    RunFolder Folder,
    ulong? Seed,
    long? Evaluations,
    double? Minutes,
    int Threads,
    bool Resume,
    bool Force,
    string ProgramVersion,
    string Holder = "a process without a name")
{
    /// <summary>What parts the cells of the tables that are written; null leaves it to the scenario.</summary>
    public CellSeparator? Separator { get; init; }

    /// <summary>Whether the first answer is proved as far as it goes.</summary>
    public bool Proves { get; init; }
}
