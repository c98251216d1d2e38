using DesignSearch.Files;
using DesignSearch.Runs.Journal;
using DesignSearch.Search;
using Xunit;

namespace DesignSearch.Runs.Tests;

/// <summary>A journal gives back what was written into it to the last bit, and anything else is told.</summary>
public sealed class JournalFileTests : IDisposable
{
    private static readonly JournalHead Head = new("1", 7, 16, [new("scenario.toml", "aa"), new("stock.csv", "bb")]);
    private static readonly JournalShape Shape = new(2, 2, 1);

    private static readonly (double[] Point, Evaluation Evaluation)[] Points =
        [([0, 3], new([1.0 / 3, 1e-300], [0.1], -2.5)), ([1, 2], new([5, 0], [0], 0))];

    private readonly string folder = Directory.CreateTempSubdirectory("designsearch-journal-").FullName;

    private string At => Path.Combine(folder, "journal");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_was_written_is_read_again_to_the_last_bit_and_goes_on()
    {
        Begin();
        using (var again = JournalFile.TakeUp(At, Head, Shape))
        {
            Same(Points, again.Evaluated);
            again.Append(Points[..1]);
            Same([.. Points, Points[0]], again.Evaluated);
        }

        using var third = JournalFile.TakeUp(At, Head, Shape);
        Same([.. Points, Points[0]], third.Evaluated);
    }

    // Whoever pulls the plug behind a block finds the block.
    [Fact]
    public void What_is_appended_lies_on_the_disk_at_once()
    {
        using var journal = JournalFile.Begin(At, Head, over: false);
        var empty = new FileInfo(At).Length;
        journal.Append(Points);
        var written = new FileInfo(At).Length;
        Assert.True(empty > 50 && written > empty + 30, $"{empty} and {written} bytes");
        journal.Dispose();
        Assert.Equal(written, new FileInfo(At).Length);
    }

    [Fact]
    public void A_torn_or_spoilt_tail_is_cut_off()
    {
        Begin();
        var whole = File.ReadAllText(At);
        var first = whole[..(whole[..^1].LastIndexOf('\n') + 1)];
        foreach (var text in (string[])[whole[..^1], whole[..^4], first + "0,1;1,1;0;0 12345678\n" + whole, first + "no sum\n"])
        {
            File.WriteAllText(At, text);
            using (var again = JournalFile.TakeUp(At, Head, Shape))
                Same(Points[..1], again.Evaluated);
            Assert.Equal(first, File.ReadAllText(At));
        }
    }

    [Fact]
    public void A_journal_killed_before_its_head_was_whole_begins_again()
    {
        Begin();
        var whole = File.ReadAllText(At);
        File.WriteAllText(At, whole[..30]);
        using (var again = JournalFile.TakeUp(At, Head, Shape))
            Assert.Empty(again.Evaluated);
        Assert.Equal(whole.Split('\n')[..2], File.ReadAllText(At).TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Beginning_over_an_old_journal_leaves_nothing_of_it_and_without_leave_it_stays()
    {
        Begin();
        Assert.Throws<IOException>(() => JournalFile.Begin(At, Head, over: false));
        var held = false;
        using (JournalFile.Begin(At, Head, over: true, () => held = true))
            Assert.True(held);
        using var again = JournalFile.TakeUp(At, Head, Shape);
        Assert.Empty(again.Evaluated);
    }

    [Theory]
    [InlineData(3, 2, 1)]
    [InlineData(2, 1, 1)]
    [InlineData(2, 2, 0)]
    public void Lines_of_another_search_are_told_where_they_stand(int levels, int objectives, int violations)
    {
        Begin();
        var told = Assert.Throws<InputException>(() => JournalFile.TakeUp(At, Head, new(levels, objectives, violations)));
        Assert.Equal(3, told.Faults.Single().Line);
        Assert.StartsWith("levels; objectives; violations; merit", told.Faults.Single().Expected, StringComparison.Ordinal);
        using var again = JournalFile.TakeUp(At, Head, Shape);
        Same(Points, again.Evaluated);
    }

    [Fact]
    public void Each_figure_of_a_line_must_be_one()
    {
        Evaluation[] wrong =
            [new([double.NaN, 0], [0]), new([0, double.PositiveInfinity], [0]), new([0, 0], [-1]), new([0, 0], [double.NaN]), new([0, 0], [0], double.NaN)];
        Assert.All(wrong, w => Assert.False(Shape.Fits([0, 1], w)));
        Assert.False(Shape.Fits([0, double.NaN], new([0, 0], [0])));
        Assert.True(Shape.Fits([0, 1], new([0, 0], [0], -1)));
    }

    [Fact]
    public void Every_difference_to_the_search_as_it_was_begun_is_named()
    {
        var now = new JournalHead("2", 8, 32, [new("scenario.toml", "cc"), new("w.csv", "dd")], GoesThroughAll: true);
        Assert.Empty(Head.DifferencesTo(Head with { Inputs = [.. Head.Inputs] }));
        Assert.Equal(
            [
                "the program was version 1, now 2", "the seed was 7, now 8", "the block size was 16, now 32",
                "--evaluations then covered some layouts only, now it covers every one there is",
                "'scenario.toml' has changed", "'stock.csv' is no longer read", "'w.csv' was not read then",
            ],
            Head.DifferencesTo(now));
        Assert.Contains("--evaluations then covered every layout there is, now it covers some only", now.DifferencesTo(Head));
        Begin();
        var told = Assert.Throws<InputException>(() => JournalFile.TakeUp(At, now, Shape));
        Assert.Equal(7, told.Faults.Count);
        Assert.All(told.Faults, f => Assert.Equal(2, f.Line));
    }

    [Theory]
    [InlineData("mine\n", "a journal that begins with 'designsearch journal 1'")]
    [InlineData("designsearch journal 2", "a journal that begins with 'designsearch journal 1'")]
    public void A_file_that_is_no_journal_is_left_alone(string text, string expected)
    {
        File.WriteAllText(At, text);
        var told = Assert.Throws<InputException>(() => JournalFile.TakeUp(At, Head, Shape)).Faults.Single();
        Assert.Equal((1, text), (told.Line, told.Value));
        Assert.StartsWith(expected, told.Expected, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(At));
        File.Delete(At);
        JournalFile.CheckOurs(At);
        Directory.CreateDirectory(At);
        Assert.Contains("it is a folder; move it away", Assert.Throws<InputException>(() => JournalFile.CheckOurs(At)).Faults.Single().Expected, StringComparison.Ordinal);
    }

    private void Begin()
    {
        using var journal = JournalFile.Begin(At, Head, over: false);
        journal.Append(Points);
    }

    private static void Same(IEnumerable<(double[] Point, Evaluation Evaluation)> expected, IReadOnlyList<(double[] Point, Evaluation Evaluation)> found) =>
        Assert.Equal(
            expected.Select(p => (string.Join(',', p.Point), string.Join(',', p.Evaluation.Objectives), string.Join(',', p.Evaluation.Violations), p.Evaluation.Merit)),
            found.Select(p => (string.Join(',', p.Point), string.Join(',', p.Evaluation.Objectives), string.Join(',', p.Evaluation.Violations), p.Evaluation.Merit)));
}
