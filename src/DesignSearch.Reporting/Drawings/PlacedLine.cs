using DesignSearch.Layouts.Design.Schemes;

namespace DesignSearch.Reporting.Drawings;

/// <summary>A joint on a sheet: level and upright pieces in turn, from right edge to left edge of two boxes.</summary>
/// <param name="Number">Its number on the sheet, from 1.</param>
/// <param name="Joint">The joint.</param>
/// <param name="Points">Where it bends, ends included.</param>
internal sealed record PlacedLine(int Number, Joint Joint, IReadOnlyList<(int X, int Y)> Points);
