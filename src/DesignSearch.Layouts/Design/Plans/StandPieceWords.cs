namespace DesignSearch.Layouts.Design.Plans;

/// <summary>How the pieces of a frame are called.</summary>
internal static class StandPieceWords
{
    public const string Rail = "rail under the collectors, up the slope";
    public const string CrossRail = "rail across the frame";
    public const string FrontLeg = "front leg";
    public const string BackLeg = "back leg";
    public const string FootBeam = "beam from front foot to back foot";
    public const string Tray = "ballast tray";
    public const string SideBrace = "brace from back foot to the middle of the rail";
    public const string BackBrace = "brace across the back";
    public const string WallRail = "rail on the wall";
    public const string WallStrut = "strut from wall to lower edge";
    public const string Post = "post, its end in the concrete included";
    public const string Strut = "strut from sleeve to rail";
    public const string AxisTube = "axis tube";
    public const string Spreader = "beam between the feet of a trestle";
}
