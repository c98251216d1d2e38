using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>The plant drawn: where water goes, and where current and signals go. The same in words in the tables below.</summary>
internal static class SchemeSection
{
    /// <summary>The section; nothing where nothing is joined to anything.</summary>
    public static Markup Of(JudgedLayout layout) => Markup.When(layout.Scheme.Joints.Count > 0, () => Markup.Of($"""
        <section aria-labelledby="drawn"><h2 id="drawn">How it goes together</h2>
        <p>Each line has a number; the table under the picture says what it is. Lines that cross are not joined.</p>
        {Sheet(layout, "Where water and air go", Medium.Water, Medium.Air)}
        {Sheet(layout, "Where current and signals go, and what turns", Medium.Current, Medium.Signal, Medium.Shaft)}</section>

        """));

    private static Markup Sheet(JudgedLayout layout, string title, params Medium[] media)
    {
        var sheet = SchemeSheet.Of(layout.Scheme, media);
        return Markup.When(sheet.Lines.Count > 0, () => Markup.Of($"""
            <h3>{title}</h3>
            <div class="box" tabindex="0" role="region" aria-label="{title}">{SchemePicture.Of(sheet, layout.Scheme, title)}</div>
            {Table(sheet, layout, title)}
            """));
    }

    private static Markup Table(SchemeSheet sheet, JudgedLayout layout, string title)
    {
        var names = layout.Bill.GroupBy(l => l.PartId).ToDictionary(g => g.Key, g => g.First().Name, StringComparer.Ordinal);
        string What(Joint joint) => joint.PartIds.Count == 0
            ? Plain(joint.Medium)
            : string.Join(", ", joint.PartIds.Select(id => PlainText.Name(names.GetValueOrDefault(id, id))));
        return PageTable.Of(
            title,
            [new("no.", true), new("from"), new("to"), new("by"), new("length [m]", true)],
            sheet.Lines.Select(l => new Cell[]
            {
                Cell.Figure(Say.Whole(l.Number), l.Number), l.Joint.From, l.Joint.To, What(l.Joint),
                l.Joint.LengthM > 0 ? Cell.Figure(Say.Plain(Math.Round(l.Joint.LengthM, 1)), l.Joint.LengthM) : "",
            }));
    }

    private static string Plain(Medium medium) => medium switch
    {
        Medium.Water => "one screwed to the next",
        Medium.Air => "its own duct or opening",
        Medium.Shaft => "its shaft",
        Medium.Signal => "signal",
        _ => "its own lead, or inside the box",
    };
}
