namespace DesignSearch.Season.House;

/// <summary>What closes a night cover and opens it; of several, it is closed while any of them has it so.</summary>
[Flags]
public enum CoverDrawing
{
    /// <summary>Nothing: it stays open.</summary>
    None = 0,

    /// <summary>A person: closed while the sun is down.</summary>
    Hand = 1,

    /// <summary>A light sensor: closed while it is dim.</summary>
    Sensor = 2,

    /// <summary>A timer, set for the middle of each month: <see cref="Climate.Sun.Dawn.TimerHours"/>.</summary>
    Clock = 4,
}
