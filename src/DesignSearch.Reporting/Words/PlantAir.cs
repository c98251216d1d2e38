using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Words;

/// <summary>The cell that shows the lowest air about the plants.</summary>
internal static class PlantAir
{
    /// <summary>The temperature, with a word under it where it is not the air of the whole house.</summary>
    /// <param name="airC">Lowest hour mean of the plants' air [°C].</param>
    /// <param name="limitC">Frost limit [°C].</param>
    /// <param name="underFleece">True where only a bench under its fleece is held.</param>
    public static Cell Of(double airC, double limitC, bool underFleece)
    {
        var text = Say.Air(airC, limitC);
        return underFleece ? new(Markup.Of($"{text}<small>under the fleece</small>"), double.IsFinite(airC) ? airC : null) : Cell.Figure(text, airC);
    }
}
