using System.Diagnostics;
using System.Globalization;
using System.Xml.Linq;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>LibreOffice Calc from Debian, without a window: opens a file as a person's settings would and gives its cells back.</summary>
internal static class Office
{
    private const string Program = "/usr/bin/soffice";
    private static readonly XNamespace Table = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
    private static readonly XNamespace Value = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";
    private static readonly XNamespace Words = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";

    /// <summary>Skips where it is not installed.</summary>
    public static void Need()
    {
        if (!File.Exists(Program) && Environment.GetEnvironmentVariable("DESIGNSEARCH_NO_SKIP") == "1")
            Assert.Fail($"{Program} is missing, and DESIGNSEARCH_NO_SKIP forbids to skip.");
        Skip.IfNot(File.Exists(Program), "LibreOffice (libreoffice-calc-nogui) is not installed.");
    }

    /// <summary>The cells of a file's sheets, row by row: numbers as numbers, words as words, nothing for an empty cell.</summary>
    /// <param name="file">The file.</param>
    /// <param name="folder">A folder to work in.</param>
    /// <param name="settings">Separator and language of a text file as the program numbers them (44 comma, 59 semicolon; 1031 German, 1033 English); null for a workbook.</param>
    public static IReadOnlyList<IReadOnlyList<IReadOnlyList<object?>>> Sheets(string file, string folder, (int Separator, int Language)? settings)
    {
        var start = new ProcessStartInfo(Program) { RedirectStandardError = true, RedirectStandardOutput = true };
        string[] words = ["--headless", $"-env:UserInstallation=file://{folder}/profile", "--convert-to", "fods", "--outdir", folder];
        if (settings is var (separator, language))
            words = [.. words, FormattableString.Invariant($"--infilter=Text - txt - csv (StarCalc):{separator},34,UTF-8,1,,{language},false,true")];
        foreach (var word in words.Append(file))
            start.ArgumentList.Add(word);
        using var office = Process.Start(start)!;
        var (output, error) = (office.StandardOutput.ReadToEndAsync(), office.StandardError.ReadToEndAsync());
        Assert.True(office.WaitForExit(TimeSpan.FromMinutes(3)), "the spreadsheet program does not end");
        var opened = Path.Combine(folder, Path.GetFileNameWithoutExtension(file) + ".fods");
        Assert.True(File.Exists(opened), output.Result + error.Result);
        return [.. XDocument.Load(opened).Descendants(Table + "table").Select(Rows)];
    }

    private static IReadOnlyList<IReadOnlyList<object?>> Rows(XElement table) => [.. table.Elements(Table + "table-row").Select(Cells).Where(r => r.Any(c => c is not null))];

    private static IReadOnlyList<object?> Cells(XElement row)
    {
        var cells = new List<object?>();
        foreach (var cell in row.Elements())
        {
            var times = int.Parse((string?)cell.Attribute(Table + "number-columns-repeated") ?? "1", CultureInfo.InvariantCulture);
            if (times < 100)
                cells.AddRange(Enumerable.Repeat(Content(cell), times));
        }

        while (cells.Count > 0 && cells[^1] is null)
            cells.RemoveAt(cells.Count - 1);
        return cells;
    }

    private static object? Content(XElement cell) => (string?)cell.Attribute(Value + "value-type") switch
    {
        "float" => double.Parse((string)cell.Attribute(Value + "value")!, CultureInfo.InvariantCulture),
        null => null,
        "string" => string.Join('\n', cell.Elements(Words + "p").Select(Line)),
        var other => other + ": " + cell.Value,
    };

    // Several blanks are written as one sign.
    private static string Line(XElement line) => string.Concat(line.Nodes().Select(n => n switch
    {
        XText text => text.Value,
        XElement blank when blank.Name == Words + "s" => new string(' ', int.Parse((string?)blank.Attribute(Words + "c") ?? "1", CultureInfo.InvariantCulture)),
        XElement other => other.Value,
        _ => "",
    }));
}
