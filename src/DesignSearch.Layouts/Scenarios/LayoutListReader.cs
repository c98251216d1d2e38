using System.Globalization;
using DesignSearch.Files;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads many layouts: a folder of layout files, or a table with a layout a row and a column a choice.</summary>
public static class LayoutListReader
{
    private const string NameColumn = "name";

    /// <summary>Reads a folder: every <c>.toml</c> in it, by name.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="scenario">As for one file.</param>
    /// <param name="faults">Takes every fault.</param>
    public static IReadOnlyList<NamedLayout> Folder(string path, Scenario scenario, FaultList faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var files = Directory.EnumerateFiles(path, "*.toml").Order(StringComparer.Ordinal).ToList();
        if (files.Count == 0)
            faults.Add(path, 0, 0, "", "layout files, named *.toml");
        return [.. files.Select(f => new NamedLayout(Path.GetFileNameWithoutExtension(f), LayoutFileReader.Read(f, f, scenario, faults)))];
    }

    /// <summary>Reads a table from a file; see <see cref="Table"/>.</summary>
    /// <param name="path">The file; messages name it so.</param>
    /// <param name="scenario">As for one file.</param>
    /// <param name="faults">Takes every fault.</param>
    public static IReadOnlyList<NamedLayout> TableFile(string path, Scenario scenario, FaultList faults) =>
        Layouts(path, scenario, faults, row => CsvTable.ReadFile(path, row, faults));

    /// <summary>Reads a table. A cell that is empty, or a column that is absent, means what a layout file means that is silent.</summary>
    /// <param name="shownAs">How messages name it.</param>
    /// <param name="bytes">Its text in UTF-8.</param>
    /// <param name="scenario">As for one file.</param>
    /// <param name="faults">Takes every fault.</param>
    public static IReadOnlyList<NamedLayout> Table(string shownAs, byte[] bytes, Scenario scenario, FaultList faults) =>
        Layouts(shownAs, scenario, faults, row => CsvTable.Read(shownAs, bytes, row, faults));

    private static List<NamedLayout> Layouts(
        string shownAs,
        Scenario scenario,
        FaultList faults,
        Func<Func<ICsvCells, (string? Name, string?[] Cells)>, IReadOnlyList<CsvEntry<(string? Name, string?[] Cells)>>> read)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(faults);
        var set = scenario.Systems.Choices;
        (string? Name, string?[] Cells) Row(ICsvCells cells) => (
            cells.TextIfAny(NameColumn, "how the layout is called"), [.. set.All.Select(c => cells.TextIfAny(c.Key, c.Title))]);
        var before = faults.Count;
        var rows = read(Row);
        if (rows.Count == 0 && faults.Count == before)
            faults.Add(shownAs, 0, 0, "", "a row for each layout");
        var ground = new ChoiceGround(scenario.Place.LatitudeDeg, scenario.Greenhouse.FrostLimitC);
        var layouts = new List<NamedLayout>();
        foreach (var row in rows)
        {
            void Fault(Choice choice, string found, string expected)
            {
                var place = row.PlaceOf(choice.Key);
                faults.Add(shownAs, place.Line, place.Column, found, expected);
            }

            ChoiceValue Value(Choice choice, string? text)
            {
                if (text is null)
                    return choice.Silent(ground);
                var (value, expected) = ChoiceReading.OfText(choice, text, scenario.Catalogue);
                if (value is null)
                    Fault(choice, text, expected);
                return value ?? choice.AtRest;
            }

            var known = faults.Count;
            var layout = Layout.Of([.. set.All.Select((c, i) => Value(c, row.Value.Cells[i]))], set);
            if (faults.Count == known)
            {
                foreach (var (part, expected) in LayoutFileReader.Missing(layout))
                    Fault(part, "", expected);
            }

            layouts.Add(new(row.Value.Name ?? (layouts.Count + 1).ToString(CultureInfo.InvariantCulture), layout));
        }

        return layouts;
    }
}
