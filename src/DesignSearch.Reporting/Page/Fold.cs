using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Page;

/// <summary>Sections that are folded away until they are asked for, by a click, by a link into them, or all at once; on paper only those that are open.</summary>
internal static class Fold
{
    /// <summary>The fold; nothing where none of its sections is there.</summary>
    /// <param name="words">What is in it.</param>
    /// <param name="sections">Its sections.</param>
    public static Markup Of(string words, IReadOnlyList<Markup> sections)
    {
        var inside = Markup.All(sections);
        return Markup.When(inside.Text.Length > 0, () => Markup.Of($"""
            <details class="fold"><summary>{words}</summary>
            {inside}</details>

            """));
    }
}
