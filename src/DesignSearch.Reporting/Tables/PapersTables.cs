using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Tables;

/// <summary>Writes the papers of one layout as tables: what to try, what to ask, the calendar of upkeep, the log.</summary>
internal static class PapersTables
{
    /// <summary>Version of the format.</summary>
    public const int Format = 1;

    private const string Version = "format_version";

    /// <summary>How often a line is written.</summary>
    public const string HowOften = "A line a day in frost, a line a week else.";

    /// <summary>What stands in every row of an enquiry.</summary>
    private const string Advice = "a plan and no order: the licensed person decides after the local code";

    /// <summary>The papers that the layout has: a word for each, the name of its file, its text.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="currency">The scenario's word.</param>
    public static IEnumerable<(string Paper, string Name, string Text)> Of(JudgedLayout layout, string currency)
    {
        var papers = layout.Papers;
        if (papers.Steps.Count > 0)
            yield return Paper("commissioning", Steps(papers));
        foreach (var trade in papers.Enquiry.GroupBy(f => f.Trade == Trade.Electrician))
            yield return Paper(trade.Key ? "electrician" : "plumber", Enquiry(trade));
        if (layout.Upkeep.Count > 0)
            yield return Paper("upkeep", Upkeep(layout, currency));
        if (papers.Log.Count > 0)
            yield return Paper("log", Log(papers));

        (string, string, string) Paper(string word, string text) =>
            (word, ListFile.NameOf(layout)[..^".csv".Length] + $"-{word}.csv", text);
    }

    /// <summary>Who is asked.</summary>
    /// <param name="trade">The trade.</param>
    public static string Asked(Trade trade) => trade == Trade.Electrician ? "electrician" : "plumber or heating engineer";

    /// <summary>Heading of a column of the log.</summary>
    /// <param name="column">The column.</param>
    public static string Head(LogColumn column) => column.Unit.Length == 0 ? column.What : $"{column.What} [{column.Unit}]";

    private static string Log(PlantPapers papers)
    {
        var table = new CsvText([], ["date", .. papers.Log.Select(c => CsvText.Harmless(Head(c))), "remarks", Version]);
        table.Row([null, .. papers.Log.Select(_ => (object?)null), HowOften, Format]);
        return table.ToString();
    }

    private static string Steps(PlantPapers papers)
    {
        var table = new CsvText([], "no", "what", "how", "wanted", "unit", "measured", "done", "licensed", Version);
        foreach (var (i, step) in papers.Steps.Index())
            table.Row(i + 1, step.Thing, step.Try, step.Wanted, step.Unit, null, null, step.IsLicensed ? "yes" : "no", Format);
        return table.ToString();
    }

    private static string Enquiry(IEnumerable<EnquiryFact> facts)
    {
        var table = new CsvText([], "about", "planned_or_wanted", "note", Version);
        foreach (var fact in facts)
            table.Row(fact.What, fact.Value, Advice, Format);
        return table.ToString();
    }

    private static string Upkeep(JudgedLayout layout, string currency)
    {
        var table = new CsvText(
            [], "work", "when", "own_hours_per_year", "licensed_hours_per_year", "to_pay_per_year", "currency", "done", Version);
        foreach (var u in layout.Upkeep)
        {
            var pays = decimal.Round((decimal)u.LicensedHoursPerYear * layout.LicensedPerHour, 2, MidpointRounding.AwayFromZero);
            table.Row(u.What, u.When, u.HoursPerYear, u.LicensedHoursPerYear, 0.00m + pays, currency, null, Format);
        }

        return table.ToString();
    }
}
