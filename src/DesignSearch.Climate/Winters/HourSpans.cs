namespace DesignSearch.Climate.Winters;

/// <summary>Runs among hours that are marked.</summary>
internal static class HourSpans
{
    /// <summary>Every run of marked hours.</summary>
    public static IReadOnlyList<HourSpan> Of(bool[] marked)
    {
        var spans = new List<HourSpan>();
        for (var h = 0; h < marked.Length; h++)
        {
            var first = h;
            while (h < marked.Length && marked[h])
                h++;
            if (h > first)
                spans.Add(new(first, h - first));
        }

        return spans;
    }
}
