using System.Globalization;
using System.Text;
using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>A layout as a file: TOML with the keys of a scenario's [choices], one value each.</summary>
public static class LayoutFile
{
    /// <summary>Version of the format.</summary>
    public const int Format = 1;

    /// <summary>Writes a layout; only the choices that matter for it are written.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="title">A line of comment at its head.</param>
    public static string Write(Layout layout, string title)
    {
        var text = new StringBuilder();
        text.Append("# ").Append(string.Concat(title.Select(c => char.IsControl(c) ? ' ' : c))).Append('\n');
        text.Append("format = ").Append(Format.ToString(CultureInfo.InvariantCulture)).Append("\n\n[choices]\n");
        foreach (var (choice, value) in layout.Awake)
            text.Append(choice.Key).Append(" = ").Append(choice.Kind == ChoiceKind.Part ? '"' + value.Id + '"' : value.ToString()).Append('\n');
        return text.ToString();
    }

    /// <summary>Reads a layout. A key that is absent means "left out" for a part and the standard value for a number.</summary>
    /// <param name="path">Where the file lies.</param>
    /// <param name="shownAs">How messages name it.</param>
    /// <param name="catalogue">Parts that may be named.</param>
    /// <param name="ground">Latitude and frost limit, for the numbers that the file is silent about.</param>
    /// <param name="faults">Takes every fault.</param>
    public static Layout Read(string path, string shownAs, Catalogue catalogue, ChoiceGround ground, FaultList faults)
    {
        var file = TomlReader.ReadFile(path, shownAs, faults);
        if (!faults.IsEmpty && !file.Keys.Any())
            return Layout.Bare(catalogue);
        file.Whole("format", Format, Format);
        var choices = file.Table("choices", required: true);
        file.ReportUnknown();
        if (choices is null)
            return Layout.Bare(catalogue);
        var values = ChoiceTable.All.Select(c => choices.Find(c.Key) is { } found
            ? ChoiceReading.One(choices, c, found, catalogue)
            : c.Role is not null ? ChoiceValue.Cheapest : c.Kind == ChoiceKind.Part ? ChoiceValue.None : ChoiceValue.Of(ChoiceTable.Standard(c, ground))).ToList();
        choices.ReportUnknown();
        var layout = Layout.Of(values, catalogue);
        foreach (var (choice, value) in layout.Awake.Where(a => a.Value.IsNone && !a.Choice.MayBeNone))
            choices.FaultAt(choice.Key, choices.Has(choice.Key) ? value.Id : "", $"a part of kind {choice.PartKind} for '{choice.Key}', since this layout has a collector");
        return layout;
    }
}
