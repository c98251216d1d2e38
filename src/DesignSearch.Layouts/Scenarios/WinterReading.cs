using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads [[winters]].</summary>
internal static class WinterReading
{
    private const int MostDrawn = 50;
    private const string PowerCutKey = "power_cut_hours";
    private static readonly string[] KeysOfAKind = ["count", "return_years", "lowest_c", PowerCutKey];
    private static readonly string[] Kinds = ["typical", "drawn", "hard"];

    /// <summary>The winters asked for, their weights adding to 1; without any, a typical one and the hard one of ten years.</summary>
    public static IReadOnlyList<WinterWish> Read(TomlTable file, bool hasNoMains)
    {
        var wishes = file.Tables("winters").Select(t => One(t, hasNoMains)).ToList();
        if (wishes.Count == 0)
            wishes = [new("typical", WinterSort.Typical, 0.9), new("hard", WinterSort.Hard, 0.1)];
        var sum = wishes.Sum(w => w.Weight);
        return [.. wishes.Select(w => w with { Weight = w.Weight / sum })];
    }

    private static WinterWish One(TomlTable table, bool hasNoMains)
    {
        var kind = table.Word("kind", Kinds);
        var wish = new WinterWish(table.Text("name", 60, kind), (WinterSort)Math.Max(0, Array.IndexOf(Kinds, kind)), table.Number("weight", 0.001, 1000, "", 1));
        if (wish.Sort == WinterSort.Drawn)
            wish = wish with { Count = table.Whole("count", 1, MostDrawn, 4) };
        if (wish.Sort == WinterSort.Hard)
        {
            wish = wish with
            {
                ReturnYears = table.Number("return_years", 2, 100, "years", 10),
                LowestC = table.Has("lowest_c") ? table.Number("lowest_c", -60, 15, "°C") : null,
                PowerCutHours = table.Whole(PowerCutKey, 0, 24, 0),
            };
            if (hasNoMains)
                NoMains.Refuse(table, PowerCutKey);
        }

        // Where the kind is at fault, what belongs to it is not told.
        foreach (var key in Kinds.Contains(kind) && table.Find("kind")?.Text == kind ? [] : KeysOfAKind)
            table.Find(key);
        table.ReportUnknown();
        return wish;
    }
}
