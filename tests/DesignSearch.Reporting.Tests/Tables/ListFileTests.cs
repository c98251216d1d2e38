using CsCheck;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Store;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class ListFileTests
{
    [Fact]
    public void A_plain_slug_is_kept()
    {
        var layout = InventedLayouts.Bare with { Rank = 12, Slug = "cover-4-barrels" };
        Assert.Equal("lists/12-cover-4-barrels.csv", ListFile.PathOf(layout));
    }

    [Fact]
    public void Whatever_the_slug_the_file_lies_in_the_folder_of_lists() =>
        Gen.String.Sample(slug =>
        {
            var name = ListFile.NameOf(InventedLayouts.Bare with { Rank = 3, Slug = slug });
            return Path.GetFileName(name) == name && RunOutputs.IsResult("lists/" + name) && name.Length < 100 && !name.Contains('\0');
        });

    [Theory]
    [InlineData("1-a.csv", true)]
    [InlineData("31-cover-2-fixed.csv", true)]
    [InlineData("my-own.csv", false)]
    [InlineData("2-Own.csv", false)]
    [InlineData("2.csv", false)]
    [InlineData("notes.txt", false)]
    public void Only_names_that_a_search_makes_count_as_lists(string name, bool expected) => Assert.Equal(expected, RunOutputs.IsResult("lists/" + name));
}
