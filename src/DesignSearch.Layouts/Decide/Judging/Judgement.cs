using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Layouts.Decide.Sure;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>What a search came to, judged.</summary>
public sealed record Judgement
{
    /// <summary>The answer in one plain sentence.</summary>
    public required string Answer { get; init; }

    /// <summary>What else the answer says of the first pick, beside what to build and what it costs; empty where it says no more.</summary>
    public string Remark { get; init; } = "";

    /// <summary>True when at least one layout holds.</summary>
    public required bool AnythingHolds { get; init; }

    /// <summary>The house as it stands, nothing added.</summary>
    public required JudgedLayout BareHouse { get; init; }

    /// <summary>Layouts in the order of the ranking; entry i has rank i + 1.</summary>
    public required IReadOnlyList<JudgedLayout> Ranking { get; init; }

    /// <summary>Ranks of the layouts on the front of life cost against frost degree-hours, the cheapest first; 0 stands for the bare house.</summary>
    public required IReadOnlyList<int> Front { get; init; }

    /// <summary>The picks.</summary>
    public required Picks Picks { get; init; }

    /// <summary>How sure the first pick is, what less sureness saves and what more costs, in plain sentences; empty where that was not asked.</summary>
    public IReadOnlyList<string> Sureness { get; init; } = [];

    /// <summary>What was drawn to ask that; empty where it was not asked.</summary>
    public IReadOnlyList<DrawnDoubt> Drawn { get; init; } = [];

    /// <summary>Where nothing holds: how near the best came and what it lacked, in plain sentences; else empty.</summary>
    public required IReadOnlyList<string> NearestMiss { get; init; }

    /// <summary>Which check costs most, that one first: how many layouts each refuses, and the cheapest it refuses alone.</summary>
    public IReadOnlyList<Refusal> Refusals { get; init; } = [];

    /// <summary>What is not known and how it could move the answer, in plain sentences.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }
}
