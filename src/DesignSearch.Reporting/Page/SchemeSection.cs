using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Reporting.Html;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The plant drawn: water, current, cores, plan, elevation and frame. The same in words in the tables below each.</summary>
internal static class SchemeSection
{
    /// <summary>The section; nothing where there is nothing to draw.</summary>
    public static Markup Of(JudgedLayout layout)
    {
        var pictures = PictureSet.Of(layout);
        return Markup.When(pictures.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="drawn"><h2 id="drawn">How it goes together</h2>
            <p>Numbers and letters in a picture are those of the table under it. Lines that cross are not joined.</p>
            <div class="drawings">
            {pictures.Select(p => One(layout, p))}</div></section>

            """));
    }

    private static Markup One(JudgedLayout layout, Picture picture)
    {
        var file = PictureSet.NameOf(layout, picture);
        return Markup.Of($"""
            <div><h3>{picture.Title} <a class="screen file" href="{ListFile.Folder}/{file}">as a file<span class="unseen"> of its own: {picture.Title}</span></a></h3>
            <div class="box" tabindex="0" role="region" aria-label="{picture.Title}">{picture.OnPage()}</div>
            <details><summary>The same in words</summary>
            {picture.Table}</details></div>
            """);
    }
}
