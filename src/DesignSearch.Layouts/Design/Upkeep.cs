namespace DesignSearch.Layouts.Design;

/// <summary>Work that returns.</summary>
/// <param name="What">What is to be done, in plain words.</param>
/// <param name="When">When, in plain words.</param>
/// <param name="HoursPerYear">Own work in a year [h]; an order of magnitude, common practice, no source.</param>
public sealed record Upkeep(string What, string When, double HoursPerYear)
{
    /// <summary>When work is due that a winter does not forgive to forget.</summary>
    public const string EveryDay = "every day of the season";

    /// <summary>What comes of it when it is forgotten, where that is reckoned.</summary>
    public Mishap IfForgotten { get; init; }

    /// <summary>Work of a licensed person in a year, paid by the hour [h]; an order of magnitude, common practice, no source.</summary>
    public double LicensedHoursPerYear { get; init; }
}
