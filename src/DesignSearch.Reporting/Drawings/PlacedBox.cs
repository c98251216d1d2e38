namespace DesignSearch.Reporting.Drawings;

/// <summary>A component on a sheet.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Layer">Column, from 0 at the left.</param>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Height">Height; all have the same width.</param>
internal sealed record PlacedBox(string Name, int Layer, int X, int Y, int Height);
