using System.Text.RegularExpressions;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using DesignSearch.Files.Toml;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads a format from its TOML file.</summary>
internal static class FormatMapReader
{
    private static readonly string[] FieldNames = ["air", "dew_point", "humidity", "wind", "global", "diffuse", "beam_normal", "beam_level", "sky_long_wave", "wind_at_2m"];
    private static readonly string[] HeadKeyNames =
        ["name", "latitude", "longitude", "elevation", "zone", "stamp_zone", "local_zone", "offset_hours", "offset_seconds", "slope", "utc", "stamp", "years"];

    private static readonly string[] HeadKinds = ["none", "labels", "names then values", "positions", "patterns"];
    private static readonly string[] StampWords = ["instant", "ending", "starting", "instant or starting"];
    private static readonly string[] YearWords = ["real", "typical", "as they come"];
    private static readonly string[] OriginWords = ["measured", "modelled"];

    /// <summary>Reads one; faults go to the list.</summary>
    /// <param name="id">Name of the file without its ending.</param>
    /// <param name="file">The whole file.</param>
    /// <param name="faults">Takes what is wrong.</param>
    public static FormatMap Read(string id, TomlTable file, FaultList faults)
    {
        var head = file.Table("head", required: true);
        var time = file.Table("time", required: true);
        var stamp = file.Table("stamp", required: true);
        var map = new FormatMap
        {
            Title = file.Text("title"),
            Provider = file.Text("provider"),
            Detect = Words(file, "detect"),
            WeatherOrigin = (FieldOrigin)Choice(file, "weather_origin", OriginWords, "modelled"),
            RadiationOrigin = (FieldOrigin)Choice(file, "radiation_origin", OriginWords, "modelled"),
            Head = (HeadKind)Choice(head, "kind", HeadKinds, "none"),
            HeadKeys = Keys(head),
            TimeColumns = time?.Find("columns") is { } columns ? [.. columns.Items.Select(Names)] : [],
            TimePatterns = Words(time, "patterns"),
            Zone = time?.Word("zone", ["head", "utc", "longitude"], "head") ?? "head",
            Years = (YearKind)Choice(time, "years", YearWords, "as they come"),
            CivilClock = time?.Word("clock", ["standard", "civil"], "standard") == "civil",
            Radiation = (StampMeaning)Choice(stamp, "radiation", StampWords, "instant"),
            Weather = (StampMeaning)Choice(stamp, "weather", StampWords[..3], "instant"),
            Fields = Fields(file.Table("fields", required: true)),
            MissingCodes = file.Find("missing") is { } codes ? [.. codes.Items.Select(c => c.Number)] : [-9900, -9999, -9999.9, -999, -99.9, 9999, 99999],
        };
        if (map.TimeColumns.Count == 0 || map.TimePatterns.Count == 0)
            faults.Add(file.File, time?.Line ?? 1, 0, "", "[time] with columns and patterns");
        if (map.Head == HeadKind.Patterns)
            CheckPatterns(map, head!, faults);
        foreach (var table in (TomlTable?[])[file, head, time, stamp])
            table?.ReportUnknown();
        return map;
    }

    private static void CheckPatterns(FormatMap map, TomlTable head, FaultList faults)
    {
        foreach (var (key, pattern) in map.HeadKeys)
        {
            try
            {
                _ = new Regex(pattern, RegexOptions.CultureInvariant);
            }
            catch (ArgumentException)
            {
                var value = head.Find(key)!;
                faults.Add(head.File, value.Line, value.Column, pattern, "a regular expression with one group in brackets");
            }
        }
    }

    private static IReadOnlyList<string> Names(TomlValue columns) =>
        columns.Kind == TomlKind.List ? [.. columns.Items.Select(i => i.Text)] : [columns.Text];

    private static int Choice(TomlTable? table, string key, string[] words, string usual) =>
        table is null ? Array.IndexOf(words, usual) : Array.IndexOf(words, table.Word(key, words, usual));

    private static string[] Words(TomlTable? table, string key) => table?.Find(key) is { Kind: TomlKind.List } list ? [.. list.Items.Select(i => i.Text)] : [];

    private static Dictionary<string, string> Keys(TomlTable? head)
    {
        var keys = new Dictionary<string, string>();
        foreach (var key in HeadKeyNames)
        {
            if (head?.Find(key) is { Kind: TomlKind.Text } value)
                keys[key] = value.Text;
        }

        return keys;
    }

    private static List<FieldMap> Fields(TomlTable? table)
    {
        var fields = new List<FieldMap>();
        for (var f = 0; table is not null && f < FieldNames.Length; f++)
        {
            if (table.Table(FieldNames[f], required: false) is not { } field)
                continue;
            fields.Add(new((WeatherField)f, Words(field, "names"), field.Text("unit", 20, ""), field.Flag("needed", false)));
            field.ReportUnknown();
        }

        table?.ReportUnknown();
        return fields;
    }
}
