namespace DesignSearch.Runs.Starting;

/// <summary>What the sky of a place is like through the year.</summary>
internal enum Sky
{
    /// <summary>Cloudy for weeks.</summary>
    Dull,

    /// <summary>Clouds and sun.</summary>
    Usual,

    /// <summary>Clear most days.</summary>
    Sunny,
}
