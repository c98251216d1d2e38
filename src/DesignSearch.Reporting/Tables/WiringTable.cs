using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Tables;

/// <summary>Writes the wiring of one layout as a table: <c>lists/1-…-wiring.csv</c>. Advice only, and every row says so.</summary>
internal static class WiringTable
{
    /// <summary>Version of the format.</summary>
    public const int Format = 3;

    /// <summary>What stands in the last but one column of every row.</summary>
    public const string Advice = "advice only: a licensed person decides after the local code";

    /// <summary>Name of the file: <c>3-slug-wiring.csv</c>.</summary>
    public static string NameOf(JudgedLayout layout) => ListFile.NameOf(layout)[..^".csv".Length] + "-wiring.csv";

    /// <summary>The table of a layout.</summary>
    public static string Of(JudgedLayout layout)
    {
        var table = new CsvText(
            [], "cable_no", "device", "count", "voltage_v", "current_a", "start_current_a", "cable", "cores", "section_mm2", "core_terminals", "cable_m", "cable_bears_a",
            "voltage_lost_percent", "fuse_no", "fuse_a", "switched_by", "limit_switches_and_interlock", "note",
            "format_version");
        foreach (var wire in layout.Wires)
            table.Row(
                wire.Tag, wire.Device, wire.Count, wire.Volts, wire.CurrentA, wire.StartA, wire.Cable, wire.Cores,
                wire.SectionMm2 > 0 ? wire.SectionMm2 : null, PictureWords.Cores(wire), wire.CableM, wire.CableBearsA,
                wire.DropPercent, wire.FuseTag, wire.FuseA > 0 ? wire.FuseA : wire.IsSignal ? "" : "none fits", wire.SwitchedBy, wire.Stops,
                Advice, Format);
        return table.ToString();
    }
}
