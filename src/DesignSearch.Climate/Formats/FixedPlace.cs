namespace DesignSearch.Climate.Formats;

/// <summary>Where a field of fixed width stands.</summary>
/// <param name="Name">Its name, as the map calls it.</param>
/// <param name="From">First character, from 1.</param>
/// <param name="To">Last character.</param>
internal sealed record FixedPlace(string Name, int From, int To)
{
    /// <summary>The field of a line, without the blanks around it; empty where the line ends before it.</summary>
    public string Of(string line) => line.Length < From ? "" : line[(From - 1)..Math.Min(To, line.Length)].Trim();
}
