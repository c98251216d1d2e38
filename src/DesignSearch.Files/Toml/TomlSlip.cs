namespace DesignSearch.Files.Toml;

/// <summary>A slip that spoils a whole value.</summary>
/// <param name="Line">Index of the line to name, from 0.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="First">Index of the line in which the value begins.</param>
/// <param name="Last">Index of the last line that is lost with it.</param>
/// <param name="Expected">What should stand there.</param>
internal readonly record struct TomlSlip(int Line, int Column, int First, int Last, string Expected);
