using CsCheck;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class MarkupTests
{
    [Fact]
    public void Text_in_a_hole_stays_text()
    {
        Assert.Equal("<p title=\"&quot;&gt;&lt;b&gt;&#39;&amp;\">x</p>", Markup.Of($"<p title=\"{"\"><b>'&"}\">x</p>").Text);
    }

    [Fact]
    public void Markup_in_a_hole_is_kept()
    {
        var inner = Markup.Of($"<b>{"<"}</b>");
        Assert.Equal("<p><b>&lt;</b></p>", Markup.Of($"<p>{inner}</p>").Text);
    }

    [Fact]
    public void Controls_and_turning_marks_become_visible()
    {
        Assert.Equal("a\uFFFDb\uFFFDc\uFFFD \uFFFD", Markup.Of($"{"a\0b\u202Ec\uD800\n\u200F"}").Text);
    }

    [Fact]
    public void Long_text_is_cut_and_says_how_long_it_was()
    {
        var shown = PlainText.Name(new string('w', 10_000));
        Assert.StartsWith(new string('w', PlainText.LongestName) + "…", shown, StringComparison.Ordinal);
        Assert.EndsWith("(10\u202F000 characters)", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_at_all_opens_an_element_or_leaves_an_attribute() =>
        Gen.String.Sample(s => !Markup.Of($"{s}").Text.AsSpan().ContainsAny("<>\"'\0"));
}
