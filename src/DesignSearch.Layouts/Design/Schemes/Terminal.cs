namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>Where something is joined to a component.</summary>
/// <param name="Name">A word, of no other terminal of the component.</param>
/// <param name="Medium">What goes through it.</param>
public sealed record Terminal(string Name, Medium Medium)
{
    /// <summary>Where water enters.</summary>
    public static Terminal Inlet { get; } = new("in", Medium.Water);

    /// <summary>Where water leaves.</summary>
    public static Terminal Outlet { get; } = new("out", Medium.Water);

    /// <summary>Where current enters.</summary>
    public static Terminal Power { get; } = new("power", Medium.Current);

    /// <summary>Where current goes on to others.</summary>
    public static Terminal Feeds { get; } = new("feeds", Medium.Current);

    /// <summary>What it is told.</summary>
    public static Terminal Told { get; } = new("told", Medium.Signal);

    /// <summary>What it tells others.</summary>
    public static Terminal Tells { get; } = new("tells", Medium.Signal);

    /// <summary>The shaft that it turns.</summary>
    public static Terminal Turns { get; } = new("turns", Medium.Shaft);

    /// <summary>The shaft that it is turned by.</summary>
    public static Terminal Turned { get; } = new("turned", Medium.Shaft);

    /// <summary>Where air enters.</summary>
    public static Terminal AirIn { get; } = new("air in", Medium.Air);

    /// <summary>Where air leaves.</summary>
    public static Terminal AirOut { get; } = new("air out", Medium.Air);
}
