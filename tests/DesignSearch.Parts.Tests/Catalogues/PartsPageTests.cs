using System.Text;
using DesignSearch.Parts.Money;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

/// <summary>The tables of columns in docs/parts.md come from the code that reads the files. Set DESIGNSEARCH_WRITE_DOCS=1 to write them anew.</summary>
public sealed class PartsPageTests
{
    private const string Begin = "<!-- columns: written by a test, do not edit below -->";

    private static string Page => Repository.At("docs", "parts.md");

    [Fact]
    public void Columns_on_the_page_are_those_of_the_code()
    {
        var text = File.ReadAllText(Page).ReplaceLineEndings("\n");
        var head = text[..(text.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length)];
        var expected = head + "\n" + Tables();
        if (Environment.GetEnvironmentVariable("DESIGNSEARCH_WRITE_DOCS") == "1")
            File.WriteAllText(Page, expected);
        else
            Assert.True(expected == text, "docs/parts.md has drifted from the code: run this test once with DESIGNSEARCH_WRITE_DOCS=1");
    }

    [Fact]
    public void Starter_catalogue_has_each_file_of_the_page() =>
        Assert.All(Kinds.All, k => Assert.True(File.Exists(Repository.At("catalogs", "starter", k.File)), k.File));

    private static string Tables()
    {
        var text = new StringBuilder();
        var shared = Kinds.All[0].Columns.Select(c => c.Name).TakeWhile(n => n != "note").Append("note").ToHashSet();
        Table(text, "Every file", Kinds.All[0].Columns.Where(c => shared.Contains(c.Name)).Select(c => c.Name == "unit" ? c with { Expected = "piece, m, m2, m3, l or set; each kind allows only what makes sense for it" } : c));
        foreach (var kind in Kinds.All)
            Table(text, $"{kind.File} ({kind.Name}; unit {kind.Columns.Single(c => c.Name == "unit").Expected})", kind.Columns.Where(c => !shared.Contains(c.Name)));
        Table(text, "stock.csv", Stock.Columns);
        return text.ToString();
    }

    private static void Table(StringBuilder text, string title, IEnumerable<Files.CsvColumn> columns)
    {
        text.Append("\n## ").Append(title).Append("\n\n| column | holds | meaning |\n| --- | --- | --- |\n");
        foreach (var column in columns)
            text.Append("| `").Append(column.Name).Append("` | ").Append(column.Expected.Replace(" with a decimal point and no thousands separator", "", StringComparison.Ordinal)).Append(column.IsOptional ? " (may be empty)" : "").Append(" | ").Append(column.What).Append(" |\n");
    }
}
