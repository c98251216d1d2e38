using DesignSearch.Files;

namespace DesignSearch.Layouts;

/// <summary>Reads [money].</summary>
internal static class MoneyReading
{
    public static MoneyTerms Read(TomlTable? table)
    {
        if (table is null)
            return new MoneyTerms("", 0, 10, 0, 0, null);
        var terms = new MoneyTerms(
            table.Text("currency", 20),
            Cents(table.Number("budget", 0, 1e7)),
            table.Whole("years", 1, 50, 10),
            table.Number("interest", 0, 0.5, "as a share a year (0.04 is 4 %)", 0.03),
            (decimal)table.Number("tariff_per_kwh", 0, 100),
            table.Has("build_hours") ? table.Number("build_hours", 1, 10000, "h") : null);
        table.ReportUnknown();
        return terms;
    }

    private static decimal Cents(double amount) => Math.Round((decimal)amount, 2);
}
