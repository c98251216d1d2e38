namespace DesignSearch.Fitting.Logs;

/// <summary>A file of a log.</summary>
/// <param name="Name">Its name without folder.</param>
/// <param name="Sha256">Of its bytes, small letters.</param>
/// <param name="Holds">What was taken from it, in plain words.</param>
public sealed record LogFile(string Name, string Sha256, string Holds);
