using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class HourSpansTests
{
    [Fact]
    public void Every_marking_of_nine_hours_is_cut_into_its_runs()
    {
        for (var code = 0; code < 512; code++)
        {
            var marked = Enumerable.Range(0, 9).Select(h => (code >> h & 1) == 1).ToArray();
            var spans = HourSpans.Of(marked);
            var back = new bool[9];
            foreach (var (first, count) in spans)
                Array.Fill(back, true, first, count);
            Assert.Equal(marked, back);
            Assert.Equal(Enumerable.Range(0, 9).Count(h => marked[h] && (h == 0 || !marked[h - 1])), spans.Count);
        }
    }
}
