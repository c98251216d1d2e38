namespace DesignSearch.Runs.Store;

/// <summary>One file that went into a run.</summary>
/// <param name="File">Path as the scenario names it.</param>
/// <param name="Sha256">Hash of its bytes, hexadecimal.</param>
public sealed record StoredInput(string File, string Sha256);
