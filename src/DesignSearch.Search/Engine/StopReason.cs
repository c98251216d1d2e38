namespace DesignSearch.Search.Engine;

/// <summary>Why a search ended.</summary>
public enum StopReason
{
    /// <summary>Every allowed evaluation was spent.</summary>
    Budget,

    /// <summary>The caller said that the time is up.</summary>
    Time,

    /// <summary>The caller cancelled.</summary>
    Cancelled,

    /// <summary>The dominated area grew too little for too long.</summary>
    Stagnation,

    /// <summary>The dominated area asked for was reached.</summary>
    Target,

    /// <summary>Every point that passes the screen was evaluated; the answer is exact.</summary>
    Enumerated,

    /// <summary>Nothing is left that passes the screen and could better the front: all else was gone through; the answer is exact.</summary>
    Exhausted,

    /// <summary>Many draws found no further point that passes the screen and could better the front; nothing proves that there is none.</summary>
    Unfound,
}
