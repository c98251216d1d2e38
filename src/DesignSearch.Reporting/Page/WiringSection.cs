using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Tables;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>What is wired to what, as advice for the licensed person who decides.</summary>
internal static class WiringSection
{
    private static readonly Markup Advice = Markup.Of(
        $"Advice only: a licensed person decides after the local code, and mains work is theirs. Low voltage and mains never share "
            + $"a box, a duct or a plug. A fuse is of the time-lag kind and protects its cable, which bears it until it melts.");

    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout)
    {
        var name = WiringTable.NameOf(layout);
        return Markup.When(layout.Wires.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="wiring"><h2 id="wiring">Wiring</h2>
            <p>{Advice} The same table for a spreadsheet: <a href="{ListFile.Folder}/{name}">{name}</a></p>
            {Table(layout)}</section>

            """));
    }

    /// <summary>The wiring of a layout as a table.</summary>
    public static Markup Table(JudgedLayout layout) => PageTable.Of(
        $"Wiring of layout {Say.Whole(layout.Rank)}",
        [
            new("device"),
            new("voltage [V]", true),
            new("current [A]", true),
            new("at start [A]", true),
            new("cable, one way"),
            new("cores by number, and their terminals"),
            new("voltage lost [%]", true),
            new("fuse or breaker [A]", true),
            new("switched by, or where"),
            new("limit switches, interlock, task"),
        ],
        layout.Wires.Select((w, i) => new Cell[]
        {
            PlainText.Name(w.Device), Number(w.Volts, 0), Current(w.CurrentA), Current(w.StartA), Cable(w),
            w.Ends.Count > 0 ? PictureWords.Cores(w) : w.Cores > 0 ? Number(w.Cores, 0) : "",
            Number(w.DropPercent, 1),
            w.FuseA > 0 ? Fuse(w, layout.Wires.Take(i).Any(o => o.FuseTag == w.FuseTag)) : w.IsSignal ? "" : "none fits", w.SwitchedBy, w.Stops,
        }));

    private static Cell Number(double value, int digits) => Cell.Figure(Say.Plain(Math.Round(value, digits)), value);

    // What only passes on another's current draws none of its own.
    private static Cell Current(double amperes) => amperes > 0 ? Number(amperes, 2) : "–";

    private static Cell Fuse(Wire wire, bool isTold) => wire.FuseTag.Length == 0
        ? Cell.Figure(Say.Plain(Math.Round(wire.FuseA, 2)), wire.FuseA)
        : Cell.Figure(isTold ? $"{wire.FuseTag}, as above" : $"{wire.FuseTag}: {Say.Plain(Math.Round(wire.FuseA, 2))}", wire.FuseA);

    private static string Cable(Wire wire)
    {
        var tag = wire.Tag.Length > 0 ? wire.Tag + ": " : "";
        var alike = wire.Count > 1 ? ", each of " + Say.Whole(wire.Count) : "";
        return tag + PlainText.Name(wire.Cable) + (wire.CableM > 0 ? $", {Say.Plain(Math.Round(wire.CableM, 1))} m{alike}" : "");
    }
}
