using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>What can hurt someone in the first pick, before the list that has it bought.</summary>
internal static class CautionsSection
{
    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout) => Markup.When(layout.Cautions.Count > 0, () => Markup.Of($"""
        <section class="cautions" aria-labelledby="cautions"><h2 id="cautions">Before you build: what can hurt you</h2>
        <p>These go with the parts of layout {layout.Rank}. Every layout further down has its own.</p>
        {List(layout)}</section>

        """));

    /// <summary>The cautions of a layout as a list of terms.</summary>
    public static Markup List(JudgedLayout layout) =>
        Markup.Of($"""<dl class="care">{layout.Cautions.Select(c => One(c.Topic, c.Text))}</dl>""");

    private static Markup One(string topic, string text) =>
        Markup.Of($"<div><dt>{Say.Capital(PlainText.Name(topic))}</dt><dd>{PlainText.Sentence(text)}</dd></div>");
}
