using CsCheck;
using Xunit;

namespace DesignSearch.Search.Tests;

public class FrontArchiveTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void Holds_what_brute_force_holds(int objectives) =>
        Gen.Int[0, 12].Array[objectives].Array[0, 60].Sample(rows =>
        {
            var archive = FrontArchive.For(objectives);
            for (var i = 0; i < rows.Length; i++)
                archive.Add(new([], new([.. rows[i].Select(v => (double)v)], []), i));
            var expected = rows.Where((a, i) => !rows.Where((b, j) => Covers(b, a) && (!Covers(a, b) || j < i)).Any()).Select(r => string.Join(' ', r)).Order(StringComparer.Ordinal);
            var members = Enumerable.Range(0, archive.Count).Select(i => archive[i].Evaluation.Objectives).ToArray();
            Assert.Equal(expected, members.Select(m => string.Join(' ', m)).Order(StringComparer.Ordinal));
            if (objectives == 2)
                Assert.Equal(members.OrderBy(m => m[0]), members);
            foreach (var row in rows)
                Assert.True(archive.Covers([.. row.Select(v => (double)v)]));
        });

    private static bool Covers(int[] a, int[] b) => a.Zip(b).All(p => p.First <= p.Second);
}
