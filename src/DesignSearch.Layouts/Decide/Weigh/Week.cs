using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>One week of a layout, hour by hour.</summary>
/// <param name="Winter">Name of its winter.</param>
/// <param name="Start">Start of the first hour, local standard time; the year is nominal.</param>
/// <param name="Hours">The hours in turn.</param>
public sealed record Week(string Winter, DateTime Start, IReadOnlyList<WeekHour> Hours)
{
    /// <summary>Where the plants that are held stand, whose air the hours tell; null for the whole house.</summary>
    public PlantPlace? Plants { get; init; }
}
