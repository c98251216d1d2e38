using DesignSearch.Layouts.Design;
using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Words;

/// <summary>The cell that shows the lowest air about the plants.</summary>
internal static class PlantAir
{
    /// <summary>The temperature, with a word under it where it is not the air of the whole house.</summary>
    /// <param name="airC">Lowest hour mean of the plants' air [°C].</param>
    /// <param name="limitC">Frost limit [°C].</param>
    /// <param name="plants">Where the plants that are held stand; null for the whole house.</param>
    public static Cell Of(double airC, double limitC, PlantPlace? plants)
    {
        var text = Say.Air(airC, limitC);
        return plants is null ? Cell.Figure(text, airC) : new(Markup.Of($"{text}<small>{plants.Where}</small>"), double.IsFinite(airC) ? airC : null);
    }
}
