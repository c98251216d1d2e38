using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Compost;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>A layout in a few plain words.</summary>
public static class LayoutWords
{
    /// <summary>For instance "night cover, 4 barrels, 2 collectors (4.0 m², two-position) on a 300 L tank, 1 kW heater"; "bare house" where nothing is added.</summary>
    public static string Title(BuiltLayout built)
    {
        var words = new List<string>();
        foreach (var (key, word) in new[] { ("night_cover", "night cover"), ("lining", "lining"), ("sealing", "seals"), ("perimeter_board", "edge board"), ("wind_break", "wind break") })
        {
            if (!built.Layout[key].IsNone)
                words.Add(word);
        }

        if (built.Installation.Barrels.WaterKg > 0)
        {
            var count = (int)built.Layout["barrel_count"].Number;
            words.Add(FormattableString.Invariant($"{Count(count, "barrel")} ({built.Installation.Barrels.WaterKg:0} L)"));
        }

        if (built.Solar is { } solar)
            words.Add(FormattableString.Invariant($"{Count(solar.Count, "collector")} ({solar.AreaM2:0.0} m², {Turning(built)}) with {(solar.TankCount == 1 ? "a" : FormattableString.Invariant($"{solar.TankCount}"))} {solar.Tank.VolumeL:0} L tank{(solar.TankCount == 1 ? "" : "s")}"));
        if (built.Installation.Find<CompostNumbers>() is { } heap)
            words.Add(FormattableString.Invariant($"{heap.VolumeM3:0.#} m³ compost heap with a {built.Layout["compost_coil_m"].Number:0} m coil"));
        if (built.Installation.Find<BenchNumbers>() is { } bench)
            words.Add(FormattableString.Invariant($"{bench.AreaM2:0.#} m² {(bench.PowerW > 0 ? "heated " : "")}bench under fleece"));
        if (built.Installation.Heater.PowerW > 0)
            words.Add(FormattableString.Invariant($"{built.Installation.Heater.PowerW / 1000:0.#} kW heater"));
        return words.Count == 0 ? "bare house" : string.Join(", ", words);
    }

    /// <summary>How the collector turns: "none", "fixed", "two-position", "stepped" or "continuous".</summary>
    public static string Turning(BuiltLayout built) => built.Solar?.Mount.Turning switch
    {
        null => "none",
        TurningKind.Fixed => "fixed",
        TurningKind.TwoPosition => "two-position",
        TurningKind.Stepped => "stepped",
        _ => "continuous",
    };

    private static string Count(int count, string noun) => FormattableString.Invariant($"{count} {noun}{(count == 1 ? "" : "s")}");
}
