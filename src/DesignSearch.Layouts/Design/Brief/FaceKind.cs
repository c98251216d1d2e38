namespace DesignSearch.Layouts.Design.Brief;

/// <summary>A face of the house's cover.</summary>
public enum FaceKind
{
    /// <summary>The long wall on the right hand of one who looks along the ridge; the front of a lean-to.</summary>
    LongWall,

    /// <summary>The long wall on the left hand.</summary>
    OtherLongWall,

    /// <summary>The end towards which the ridge runs.</summary>
    End,

    /// <summary>The end it comes from.</summary>
    OtherEnd,

    /// <summary>The roof on the right hand; half of a hoop; all of a lean-to's.</summary>
    Roof,

    /// <summary>The roof on the left hand.</summary>
    OtherRoof,
}
