namespace DesignSearch.Climate.Plane;

/// <summary>How far a mount is turned, hour by hour, as its controls would do it.</summary>
/// <remarks>Turns are positive towards the afternoon side. Every array has as many entries as the winter has hours.</remarks>
public sealed class MountSchedule
{
    /// <summary>Turn at the start of the hour [°].</summary>
    public required double[] TurnDeg { get; init; }

    /// <summary>Turn after a change within the hour [°]; the same as before where nothing moves.</summary>
    public required double[] LaterTurnDeg { get; init; }

    /// <summary>Share of the hour before the change, 0 to 1; 1 where nothing moves.</summary>
    public required double[] ShareBefore { get; init; }

    /// <summary>Starts of the drive in the season, warm-up not counted.</summary>
    public required int Moves { get; init; }

    /// <summary>Way turned in the season, both directions added [°].</summary>
    public required double TravelDeg { get; init; }
}
