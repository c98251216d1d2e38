namespace DesignSearch.Runs.Store;

/// <summary>What stands in a run's folder: its stored run, or why there is none.</summary>
/// <param name="Folder">The folder, below the one that was gathered, with forward slashes.</param>
/// <param name="State">finished, under way, not begun or unreadable.</param>
/// <param name="Run">The stored run; null unless finished.</param>
/// <param name="Note">What a person should know of it; empty for nothing.</param>
public sealed record GatheredRun(string Folder, string State, StoredRun? Run, string Note);
