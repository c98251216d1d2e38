using DesignSearch.Season;

namespace DesignSearch.Layouts.Design;

/// <summary>A doubtful figure of a plant, and the plant with it.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Change">A plant of which that figure, and nothing else, is the one given; other figures stay as they are in the plant handed in.</param>
public sealed record PlantDoubt(DoubtfulFigure Figure, Func<Installation, double, Installation> Change);
