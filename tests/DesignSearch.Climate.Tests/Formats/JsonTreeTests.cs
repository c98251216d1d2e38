using System.Text;
using DesignSearch.Climate.Formats;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What stands where in a JSON file, rows or columns; lists in lists and lists in rows are passed over.</summary>
public sealed class JsonTreeTests
{
    private const string Text = "{\"place\": {\"lat\": -44.2, \"name\": \"Gr\\u00fcn\", \"none\": null},\n"
        + " \"rows\": [{\"t\": \"a\", \"x\": 1, \"more\": {\"y\": 2}}, {\"t\": \"b\", \"list\": [7, 8], \"x\": null},\n {\"t\": \"c\", \"z\": 9}],\n"
        + " \"columns\": {\"t\": [1, [2, 3], 4], \"u\": [true]}, \"empty\": []}";

    private static readonly JsonTree Tree = JsonTree.Read("made.json", Encoding.UTF8.GetBytes(Text));

    [Fact]
    public void Single_values_are_found_by_their_path()
    {
        Assert.Equal(("-44.2", "Grün", ""), (Fact("place.lat"), Fact("place.name"), Fact("place.none")));
        Assert.Null(Tree.Fact("place"));
        Assert.Null(Tree.Fact("rows.t"));
        Assert.All(new[] { "place", "place.lat", "rows", "rows.t", "rows.more", "columns", "columns.u" }, p => Assert.True(Tree.Has(p), p));
        Assert.All(new[] { "plac", "place.latitude", "rows.list", "lat", "" }, p => Assert.False(Tree.Has(p), p));
    }

    [Fact]
    public void Rows_become_columns_with_what_they_lack_left_empty()
    {
        Assert.Equal(["t", "x", "more.y", "z"], Tree.Names("rows"));
        Assert.Equal(["a", "b", "c"], Column("rows", "t"));
        Assert.Equal(["1", "", ""], Column("rows", "x"));
        Assert.Equal(["2", "", ""], Column("rows", "more.y"));
        Assert.Equal(["", "", "9"], Column("rows", "z"));
    }

    [Fact]
    public void Columns_are_as_they_stand_and_lists_in_them_are_passed_over()
    {
        Assert.Equal(["t", "u"], Tree.Names("columns"));
        Assert.Equal(["1", "4"], Column("columns", "t"));
        Assert.Equal(["true"], Column("columns", "u"));
        Assert.Equal(["rows.t", "rows.x", "rows.more.y", "rows.z", "columns.t", "columns.u"], Tree.Names(""));
    }

    [Fact]
    public void Each_value_knows_its_line_and_column()
    {
        var rows = Tree.Column("rows", "t");
        Assert.Equal([(2, 18), (2, 56), (3, 9)], rows.Select(Tree.PlaceOf));
        Assert.Equal([2, 2, 3], rows.Select(Tree.LineOf));
        Assert.Equal((1, 19), Tree.PlaceOf(Tree.Fact("place.lat")!.Value));
    }

    [Theory]
    [InlineData("{\"a\": [1, 2}", 1, 12, "JSON that is whole; it cannot be read from here on (cut short, or not JSON?)")]
    [InlineData("{\"a\":\n [1, x]}", 2, 6, "JSON that is whole; it cannot be read from here on (cut short, or not JSON?)")]
    public void What_is_no_json_is_told_where_it_ends(string text, int line, int column, string expected)
    {
        var fault = Assert.Single(Assert.Throws<InputException>(() => JsonTree.Read("made.json", Encoding.UTF8.GetBytes(text))).Faults);
        Assert.Equal((line, column, expected), (fault.Line, fault.Column, fault.Expected));
    }

    // Twenty-four brackets in each other are read, one more is not.
    [Theory]
    [InlineData(24, true)]
    [InlineData(25, false)]
    public void Depth_has_an_end(int deep, bool isRead)
    {
        var bytes = Encoding.UTF8.GetBytes("{\"a\":" + string.Concat(Enumerable.Repeat("{\"b\":", deep - 1)) + "1" + new string('}', deep));
        if (isRead)
            Assert.True(JsonTree.Read("made.json", bytes).Has("a.b"));
        else
            Assert.Equal("JSON of at most 24 brackets in each other", Assert.Single(Assert.Throws<InputException>(() => JsonTree.Read("made.json", bytes)).Faults).Expected);
    }

    private static string Fact(string path) => Tree.TextOf(Tree.Fact(path)!.Value);

    private static IEnumerable<string> Column(string path, string name) => Tree.Column(path, name).Select(Tree.TextOf);
}
