using DesignSearch.Files;
using DesignSearch.Reporting.Tables;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>A spreadsheet program opens what is written, with German and with English settings, and gives the same cells back.</summary>
public sealed class OfficeTests
{
    private const int English = 1033;
    private const int German = 1031;

    [SkippableTheory]
    [InlineData(CellSeparator.Comma, ',', English)]
    [InlineData(CellSeparator.Semicolon, ';', German)]
    public void Tables_open_with_the_settings_they_are_written_for(CellSeparator separator, char sign, int language)
    {
        Office.Need();
        using var folder = new ScratchFolder();
        var run = InventedRun.Finished();
        Assert.Contains(SpreadsheetTable.Cells(LayoutTable.Ranking(run)), r => r.OfType<double>().Any(d => d != Math.Floor(d)));
        run = run with { Scenario = run.Scenario with { Separator = separator } };
        RunFiles.WriteAll(run, folder.Path);
        var first = run.Judgement.Ranking[0];
        foreach (var (file, table) in new[] { ($"lists/{first.Rank}-{first.Slug}.csv", ShoppingList.Of(first, run.Scenario.Currency)), ("ranking.csv", LayoutTable.Ranking(run)) })
        {
            var opened = Assert.Single(Office.Sheets(folder.At(file), folder.Path, (sign, language)));
            Same(SpreadsheetTable.Cells(table), opened);
        }
    }

    [SkippableFact]
    public void The_workbook_opens_with_a_sheet_a_layout()
    {
        Office.Need();
        using var folder = new ScratchFolder();
        var run = InventedRun.Finished();
        RunFiles.WriteAll(run, folder.Path);
        var sheets = Office.Sheets(folder.At("lists.xlsx"), folder.Path, settings: null);
        Assert.Equal(run.Judgement.Ranking.Count, sheets.Count);
        foreach (var (layout, sheet) in run.Judgement.Ranking.Zip(sheets))
            Same(SpreadsheetTable.Cells(ShoppingList.Of(layout, run.Scenario.Currency)), sheet);
    }

    private static void Same(IReadOnlyList<IReadOnlyList<object?>> written, IReadOnlyList<IReadOnlyList<object?>> opened)
    {
        Assert.True(written.Sum(r => r.OfType<double>().Count()) > 3);
        Assert.Equal(written.Select(Row), opened.Select(Row));
    }

    private static string Row(IReadOnlyList<object?> cells) =>
        string.Join(" | ", cells.Select(c => c is double d ? FormattableString.Invariant($"{d:G12}") : $"{c}")).TrimEnd(' ', '|');
}
