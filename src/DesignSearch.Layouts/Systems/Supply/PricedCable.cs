using DesignSearch.Parts.Electrics;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>A cable with what is asked of it again and again.</summary>
/// <param name="Cable">The cable.</param>
/// <param name="OhmPerM">Resistance of one conductor [Ω/m].</param>
/// <param name="Price">Price of a metre.</param>
internal sealed record PricedCable(Cable Cable, double OhmPerM, decimal Price);
