using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Page;
using DesignSearch.Reporting.Tables;
using DesignSearch.Runs.Folder;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class PapersTablesTests
{
    private static readonly JudgedLayout Full = InventedRun.Finished().Judgement.Ranking.First(l => l.CollectorAreaM2 > 0 && l.Wires.Count > 0);

    [Fact]
    public void A_layout_has_a_file_for_each_of_its_papers_and_none_for_the_others()
    {
        Assert.Equal(["commissioning", "electrician", "plumber", "log"], PapersTables.Of(Full, "crowns").Select(p => p.Paper));
        Assert.All(PapersTables.Of(Full, "crowns"), p => Assert.True(RunOutputs.IsResult("lists/" + p.Name), p.Name));
        var bare = Full with { Papers = new(), Upkeep = [] };
        Assert.Empty(PapersTables.Of(bare, "crowns"));
    }

    [Fact]
    public void What_is_tried_leaves_room_for_a_value_and_a_tick()
    {
        var row = Assert.Single(CsvRows.Of(PapersTables.Of(Full, "crowns").First().Text));
        Assert.Equal(("1", "3.6 L/min <steady>", "L/min", "", "", "no"), (row["no"], row["wanted"], row["unit"], row["measured"], row["done"], row["licensed"]));
    }

    [Fact]
    public void The_calendar_says_what_licensed_hours_cost_a_year()
    {
        var layout = Full with { Upkeep = [new("Look.", "every autumn", 1) { LicensedHoursPerYear = 0.5 }], LicensedPerHour = 71.55m };
        var row = Assert.Single(CsvRows.Of(PapersTables.Of(layout, "crowns").Single(p => p.Paper == "upkeep").Text));
        // Half an hour at 71.55: 35.775, half a cent goes up.
        Assert.Equal("35.78", row["to_pay_per_year"]);
    }

    [Fact]
    public void The_page_has_each_paper_with_its_own_heading_and_only_where_it_is()
    {
        var scenario = InventedRun.Finished().Scenario;
        var page = PapersSection.Of(Full, scenario).Text;
        foreach (var heading in new[] { "Try it before you leave it alone", "Enquiry: electrician", "Enquiry: plumber or heating engineer", "Log sheet" })
            Assert.Contains($"""<h3 class="sheet">{heading}</h3>""", page, StringComparison.Ordinal);
        Assert.Contains("&lt;steady&gt;", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Enquiry", PapersSection.Of(Full with { Papers = Full.Papers with { Enquiry = [] } }, scenario).Text, StringComparison.Ordinal);
        Assert.Empty(PapersSection.Of(Full with { Papers = new() }, scenario).Text);
    }
}
