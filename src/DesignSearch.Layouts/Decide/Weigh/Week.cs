namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>One week of a layout, hour by hour.</summary>
/// <param name="Winter">Name of its winter.</param>
/// <param name="Start">Start of the first hour, local standard time; the year is nominal.</param>
/// <param name="Hours">The hours in turn.</param>
public sealed record Week(string Winter, DateTime Start, IReadOnlyList<WeekHour> Hours)
{
    /// <summary>True where the plants stand on a bench, whose air the hours tell.</summary>
    public bool UnderFleece { get; init; }
}
