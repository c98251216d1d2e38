namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What lies behind the wall that a lean-to leans on.</summary>
public enum BehindWall
{
    /// <summary>A room that is kept warm.</summary>
    HeatedRoom,

    /// <summary>A room that is not: a shed, a garage.</summary>
    UnheatedRoom,

    /// <summary>The open air: the wall stands free.</summary>
    Outside,
}
