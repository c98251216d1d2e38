using System.Globalization;
using System.Text.RegularExpressions;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using DesignSearch.Files.Toml;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads a format from its TOML file.</summary>
internal static class FormatMapReader
{
    private static readonly string[] FieldNames =
    [
        "air", "dew_point", "humidity", "wind", "global", "diffuse", "beam_normal", "beam_level", "sky_long_wave", "wind_at_2m", "cloud", "high", "low",
    ];

    private static readonly string[] HeadKeyNames =
        ["name", "latitude", "longitude", "elevation", "zone", "stamp_zone", "local_zone", "offset_hours", "offset_seconds", "slope", "utc", "stamp", "years"];

    private static readonly string[] HeadKinds = ["none", "labels", "names then values", "positions", "patterns", "first row", "paths"];
    private static readonly string[] TableKinds = ["columns", "fixed", "json", "elements", "month lines"];
    private static readonly string[] StampWords = ["instant", "ending", "starting", "instant or starting"];
    private static readonly string[] YearWords = ["real", "typical", "as they come"];
    private static readonly string[] OriginWords = ["measured", "modelled"];

    private const int MostFields = 1000;
    private const int LongestLine = 10_000;

    /// <summary>How expressions are matched: in a time that grows with the line only, whatever the expression.</summary>
    public const RegexOptions Patterns = RegexOptions.CultureInvariant | RegexOptions.NonBacktracking;

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
            Table = Rows(file.Table("table", required: false)),
            NearestHours = time?.Word("rows", ["as they are", "nearest to each hour"], "as they are") == "nearest to each hour",
            Head = (HeadKind)Choice(head, "kind", HeadKinds, "none"),
            HeadKeys = Keys(head),
            TimeColumns = TimeColumns(time),
            TimePatterns = Words(time, "patterns"),
            Zone = time?.Word("zone", ["head", "utc", "longitude"], "head") ?? "head",
            Years = (YearKind)Choice(time, "years", YearWords, "as they come"),
            CivilClock = time?.Word("clock", ["standard", "civil"], "standard") == "civil",
            Radiation = (StampMeaning)Choice(stamp, "radiation", StampWords, "instant"),
            Weather = (StampMeaning)Choice(stamp, "weather", StampWords[..3], "instant"),
            Fields = Fields(file.Table("fields", required: true)),
            MissingCodes = Codes(file),
        };
        if (map.TimeColumns.Count == 0 || map.TimePatterns.Count == 0)
            faults.Add(file.File, time?.Line ?? 1, 0, "", "[time] with columns and patterns");
        bool Needs(WeatherField field) => map.Fields.Any(f => f.Field == field && f.Needed);
        if (!Needs(WeatherField.Air) && !(Needs(WeatherField.High) && Needs(WeatherField.Low)))
            faults.Add(
                file.File, file.Table("fields", required: false)?.Line ?? 1, 0, "",
                "the air temperature among [fields]: air = { names = [\"…\"], needed = true }, or high and low of each day");
        CheckPlaces(map, file, faults);
        CheckHead(map, head, faults);
        foreach (var table in (TomlTable?[])[file, head, time, stamp])
            table?.ReportUnknown();
        return map;
    }

    private static TableMap Rows(TomlTable? table)
    {
        if (table is null)
            return new(TableKind.Columns);
        var rows = new TableMap((TableKind)Choice(table, "kind", TableKinds, "columns"))
        {
            Row = table.Text("row", 400, ""),
            Names = Words(table, "names"),
            Path = table.Text("path", 200, ""),
            Units = table.Text("units", 200, ""),
            DayWidth = table.Whole("day_width", 0, 100, 0),
            Places =
            [
                .. Lists(table, "places", "[\"name\", first character, last character]", IsPlace)
                    .Select(p => new FixedPlace(p[0].Text, (int)p[1].Number, (int)p[2].Number)),
            ],
        };
        if (rows.Row.Length > 0 && !IsPattern($"({rows.Row})"))
            table.FaultAt("row", rows.Row, "a regular expression that neither looks around nor back, for 'row'");
        table.ReportUnknown();
        return rows;
    }

    private static bool IsPlace(IReadOnlyList<TomlValue> place) =>
        place
            is [{ Kind: TomlKind.Text }, { Kind: TomlKind.Whole, Number: >= 1 and <= LongestLine },
            { Kind: TomlKind.Whole, Number: <= LongestLine }] && place[2].Number >= place[1].Number;

    private static List<IReadOnlyList<TomlValue>> Lists(TomlTable table, string key, string expected, Func<IReadOnlyList<TomlValue>, bool> good)
    {
        var lists = new List<IReadOnlyList<TomlValue>>();
        if (table.Find(key) is not { } list)
            return lists;
        if (list.Kind != TomlKind.List)
            table.Fault(list, $"a list of {expected} for '{key}'");
        foreach (var item in list.Items)
        {
            if (item.Kind == TomlKind.List && good(item.Items))
                lists.Add(item.Items);
            else
                table.Fault(item, $"{expected} in '{key}'");
        }

        return lists;
    }

    // What the rows of a layout without names are told by must be there.
    private static void CheckPlaces(FormatMap map, TomlTable file, FaultList faults)
    {
        var table = map.Table;
        if (table.Kind is TableKind.Columns or TableKind.Json)
            return;
        string[] needed = table.Kind switch
        {
            TableKind.Elements => ["day", "element", "value"],
            TableKind.MonthLines => ["station", "month", "element", "value", "flag"],
            _ => [.. map.TimeColumns.SelectMany(t => t), .. map.Fields.Select(f => f.Names.Count > 0 ? f.Names[0] : "")],
        };
        var there = table.Kind == TableKind.Elements ? table.Names : [.. table.Places.Select(p => p.Name)];
        var line = file.Table("table", required: false)?.Line ?? 1;
        foreach (var name in needed.Where(n => !there.Contains(n)))
            faults.Add(file.File, line, 0, name, $"'{name}' among the {(table.Kind == TableKind.Elements ? "names" : "places")} in [table]");
        if (there.Count != there.Distinct().Count())
            faults.Add(file.File, line, 0, "", "every name once in [table]");
        if (table.Row.Length == 0)
            faults.Add(file.File, line, 0, "", "a regular expression that every row fits, for 'row' in [table]");
        if (table.Kind == TableKind.MonthLines && table.DayWidth == 0)
            faults.Add(file.File, line, 0, "", "the characters from one day to the next, for 'day_width' in [table]");
    }

    private static void CheckHead(FormatMap map, TomlTable? head, FaultList faults)
    {
        foreach (var (key, where) in map.HeadKeys)
        {
            void Fault(string expected)
            {
                var value = head!.Find(key)!;
                faults.Add(head.File, value.Line, value.Column, where, expected);
            }

            if (map.Head == HeadKind.Positions && !(int.TryParse(where, NumberStyles.None, CultureInfo.InvariantCulture, out var position) && position is >= 1 and <= MostFields))
                Fault(FormattableString.Invariant($"the number of a field in quotes, \"1\" to \"{MostFields}\", for '{key}'"));
            if (map.Head == HeadKind.Patterns && !IsPattern(where))
                Fault($"a regular expression with one group in brackets, that neither looks around nor back, for '{key}'");
        }
    }

    private static bool IsPattern(string text)
    {
        try
        {
            return new Regex(text, Patterns).GetGroupNumbers().Length > 1;
        }
        catch (Exception e) when (e is ArgumentException or NotSupportedException)
        {
            return false;
        }
    }

    private static List<IReadOnlyList<string>> TimeColumns(TomlTable? time)
    {
        if (time?.Find("columns") is not { } columns)
            return [];
        const string expected = "a list of column names, or of lists of them, for 'columns'";
        if (columns.Kind != TomlKind.List)
        {
            time.Fault(columns, expected);
            return [];
        }

        var sets = new List<IReadOnlyList<string>>();
        foreach (var item in columns.Items)
        {
            IReadOnlyList<TomlValue> names = item.Kind == TomlKind.List ? item.Items : [item];
            if (names.Count > 0 && names.All(n => n.Kind == TomlKind.Text && n.Text.Length > 0))
                sets.Add([.. names.Select(n => n.Text)]);
            else
                time.Fault(item, expected);
        }

        return sets;
    }

    private static double[] Codes(TomlTable file)
    {
        if (!file.Has("missing"))
            return [-9900, -9999, -9999.9, -999, -99.9, 9999, 99999];
        return [.. Numbers(file, "missing")];
    }

    private static IEnumerable<double> Numbers(TomlTable table, string key)
    {
        if (table.Find(key) is not { } numbers)
            return [];
        if (numbers.Kind != TomlKind.List || !numbers.Items.All(IsNumber))
            table.Fault(numbers, $"a list of numbers for '{key}'");
        return numbers.Items.Select(c => c.Number);
    }

    private static bool IsNumber(TomlValue value) => value.Kind is TomlKind.Whole or TomlKind.Real;

    private static int Choice(TomlTable? table, string key, string[] words, string usual) =>
        table is null ? Array.IndexOf(words, usual) : Array.IndexOf(words, table.Word(key, words, usual));

    private static string[] Words(TomlTable? table, string key)
    {
        if (table?.Find(key) is not { } list)
            return [];
        if (list.Kind != TomlKind.List || list.Items.Any(i => i.Kind != TomlKind.Text || i.Text.Length == 0))
            table.Fault(list, $"a list of words in quotes for '{key}'");
        return [.. list.Items.Select(i => i.Text)];
    }

    private static Dictionary<string, string> Keys(TomlTable? head)
    {
        var keys = new Dictionary<string, string>();
        foreach (var key in HeadKeyNames)
        {
            if (head?.Find(key) is not { } value)
                continue;
            if (value.Kind == TomlKind.Text)
                keys[key] = value.Text;
            else
                head.Fault(value, $"words in quotes for '{key}'");
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
            var names = Words(field, "names");
            if (names.Length == 0)
                field.FaultAt("names", "", $"the names of the column in a list for 'names' in [{field.Name}]");
            fields.Add(new((WeatherField)f, names, field.Text("unit", 20, ""), field.Flag("needed", false))
            {
                Part = field.Whole("part", 0, MostFields, 0),
                Times = field.Number("times", 1e-6, 1e6, "", 1),
                Missing = [.. Numbers(field, "missing")],
                FlagColumn = field.Text("flag_column", 100, ""),
                FlagPart = field.Whole("flag_part", 0, MostFields, 0),
                BadFlags = Words(field, "bad_flags"),
                Codes = Lists(field, "codes", "[code, value]", c => c.Count == 2 && c.All(IsNumber)).GroupBy(c => c[0].Number).ToDictionary(c => c.Key, c => c.First()[1].Number),
            });
            field.ReportUnknown();
        }

        table?.ReportUnknown();
        return fields;
    }
}
