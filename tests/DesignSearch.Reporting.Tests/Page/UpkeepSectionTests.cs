using DesignSearch.Layouts.Design.Money;
using DesignSearch.Reporting.Page;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class UpkeepSectionTests
{
    [Fact]
    public void The_calendar_says_whose_hours_they_are_what_is_paid_and_what_wears_out()
    {
        var run = InventedRun.Finished();
        var first = run.Judgement.Ranking[0] with
        {
            Upkeep = [new("Draw the cover.", "every day", 25), new("Have the mains looked at.", "every year", 0) { LicensedHoursPerYear = 0.5 }],
            LicensedPerHour = 58,
            Running = run.Judgement.Ranking[0].Running with { UpkeepPerYear = 29 },
            LabourCost = 0,
            Wears = [new Wear("Machine hire", 1, 190), new Wear("Glycol", 4, 240.90m)],
        };
        var page = UpkeepSection.Of(first, run.Scenario).ToString();
        Assert.Contains("About 25 hours of your own work a year", page, StringComparison.Ordinal);
        Assert.Contains("a year of it are counted in the life cost: licensed hours; your own cost nothing there.", page, StringComparison.Ordinal);
        Assert.Contains("29.00", page, StringComparison.Ordinal);
        Assert.Contains("Machine hire", page, StringComparison.Ordinal);
        Assert.Contains("240.90", page, StringComparison.Ordinal);
        // 190 and 240.90 / 4 are 250.23 a year.
        Assert.Contains("250", page, StringComparison.Ordinal);
        var rated = UpkeepSection.Of(first with { LabourCost = 100 }, run.Scenario).ToString();
        Assert.Contains("licensed hours, and your own at your rate.", rated, StringComparison.Ordinal);
    }
}
