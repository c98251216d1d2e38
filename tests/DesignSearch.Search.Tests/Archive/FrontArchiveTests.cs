using CsCheck;
using DesignSearch.Search.Archive;
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
                Assert.Equal(!rows.Take(i).Any(b => Covers(b, rows[i])), archive.Add(new([], new([.. rows[i].Select(v => (double)v)], []), i)));
            var expected = rows.Where((a, i) => !rows.Where((b, j) => Covers(b, a) && (!Covers(a, b) || j < i)).Any()).Select(r => string.Join(' ', r)).Order(StringComparer.Ordinal);
            var members = Enumerable.Range(0, archive.Count).Select(i => archive[i].Evaluation.Objectives).ToArray();
            Assert.Equal(expected, members.Select(m => string.Join(' ', m)).Order(StringComparer.Ordinal));
            if (objectives == 2)
                Assert.Equal(members.OrderBy(m => m[0]), members);
            foreach (var row in rows)
                Assert.True(archive.Covers([.. row.Select(v => (double)v)]));
        });

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Tells_what_it_covers_and_from_which_value_on(int objectives) =>
        Gen.Select(Gen.Int[0, 9].Array[objectives].Array[0, 12], Gen.Int[-1, 10].Array[objectives]).Sample((rows, at) =>
        {
            var archive = FrontArchive.For(objectives);
            for (var i = 0; i < rows.Length; i++)
                archive.Add(new([], new([.. rows[i].Select(v => (double)v)], []), i));
            double[] probe = [.. at.Select(v => (double)v)];
            Assert.Equal(rows.Any(r => Covers(r, at)), archive.Covers(probe));
            for (var k = 0; k < objectives; k++)
            {
                var beating = rows.Where(r => Enumerable.Range(0, objectives).All(o => o == k || r[o] <= at[o])).Select(r => (double)r[k]);
                Assert.Equal(beating.DefaultIfEmpty(double.PositiveInfinity).Min(), archive.Limit(probe, k));
            }
        });

    private static bool Covers(int[] a, int[] b) => a.Zip(b).All(p => p.First <= p.Second);
}
