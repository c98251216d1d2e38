using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>What was found when layouts were asked how sure they are.</summary>
/// <param name="First">The cheapest that holds the design winters and is sure enough; the surest where none is.</param>
/// <param name="IsSure">True when it is sure enough on the draws it was chosen by.</param>
/// <param name="Surer">The cheapest that fails a third as often at most; null where none was found, or none is needed.</param>
/// <param name="MostProtection">The surest that was found; of equally sure ones the one with the warmest coldest hour.</param>
/// <param name="Chances">How those named here, and the cheapest that holds the design winters, did on draws that none of them was chosen by.</param>
/// <param name="Drawn">What was drawn.</param>
public sealed record SureFound(
    Layout First, bool IsSure, Layout? Surer, Layout MostProtection, IReadOnlyDictionary<Layout, Chance> Chances, IReadOnlyList<DoubtfulFigure> Drawn);
