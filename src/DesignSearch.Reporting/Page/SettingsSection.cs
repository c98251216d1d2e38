using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>What to dial in on the finished installation.</summary>
internal static class SettingsSection
{
    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout) => Markup.When(layout.Settings.Count > 0, () => Markup.Of($"""
        <section aria-labelledby="settings"><h2 id="settings">What to dial in</h2>
        {Table(layout)}</section>

        """));

    /// <summary>The settings of a layout as a table.</summary>
    public static Markup Table(JudgedLayout layout) => PageTable.Of(
        $"Settings of layout {Say.Whole(layout.Rank)}",
        [new("control"), new("set to"), new("why")],
        layout.Settings.Select(s => new Cell[] { PlainText.Name(s.What), PlainText.Name(s.Value), PlainText.Sentence(s.Reason) }));
}
