namespace DesignSearch.Runs.Store;

/// <summary>How a search went.</summary>
/// <param name="Seed">Seed of every random number in it.</param>
/// <param name="Evaluations">Layouts simulated.</param>
/// <param name="SpaceSize">Distinct layouts that could have been.</param>
/// <param name="StoppedBecause">One word: "exhausted", "evaluations", "time", "stagnation", "target", "unfound" or "stopped".</param>
/// <param name="StoppedInWords">The same in a plain sentence.</param>
/// <param name="IsExact">True when every layout was simulated, so that the answer is exact for this model and catalogue.</param>
/// <param name="IsPartial">True when it was stopped by hand or signal; the report carries a banner then.</param>
/// <param name="Seconds">Time it took.</param>
/// <param name="CheapestHalfWay">What the cheapest layout that holds cost over the years, of the first half of those simulated; null where none held.</param>
public sealed record SearchRecord(
    ulong Seed,
    long Evaluations,
    double SpaceSize,
    string StoppedBecause,
    string StoppedInWords,
    bool IsExact,
    bool IsPartial,
    double Seconds,
    decimal? CheapestHalfWay = null);
