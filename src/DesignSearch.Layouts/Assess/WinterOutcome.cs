using DesignSearch.Season;

namespace DesignSearch.Layouts.Assess;

/// <summary>What one of the scenario's winters did to a layout.</summary>
/// <param name="Winter">Name of the winter.</param>
/// <param name="Weight">Its weight in the weighted means, all weights adding to 1.</param>
/// <param name="Outcome">The figures of the season.</param>
/// <param name="DriveKwh">Electricity of the turning drive over the season [kWh].</param>
/// <param name="DriveMoves">Moves of the mount over the season.</param>
public sealed record WinterOutcome(string Winter, double Weight, Outcome Outcome, double DriveKwh, int DriveMoves);
