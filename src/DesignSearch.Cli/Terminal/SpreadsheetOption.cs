using System.CommandLine;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>The option --spreadsheet: what parts the cells of tables that are written.</summary>
internal static class SpreadsheetOption
{
    private const string Semicolon = "semicolon";

    /// <summary>The option; null where it is not given.</summary>
    public static Option<string?> Make()
    {
        var option = new Option<string?>("--spreadsheet")
        {
            HelpName = "comma|semicolon",
            Description = "semicolon: tables with semicolons and decimal commas, as spreadsheets of half the world open them by a double click.",
        };
        return option.AcceptOnlyFromAmong("comma", Semicolon);
    }

    /// <summary>What was asked for; null for nothing.</summary>
    public static CellSeparator? Of(ParseResult parsed, Option<string?> option) =>
        parsed.GetValue(option) switch { null => null, Semicolon => CellSeparator.Semicolon, _ => CellSeparator.Comma };
}
