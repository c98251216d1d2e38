using DesignSearch.Climate.Stations;

namespace DesignSearch.Runs.Starting;

/// <summary>Answers that later questions hang on.</summary>
internal sealed class CaseFacts
{
    /// <summary>North positive [°].</summary>
    public double LatitudeDeg { get; set; }

    /// <summary>East positive [°].</summary>
    public double LongitudeDeg { get; set; }

    /// <summary>The nearest station of the table; null where it is too far off for a first look.</summary>
    public Station? Station { get; set; }

    /// <summary>Above the sea [m].</summary>
    public double ElevationM { get; set; }

    /// <summary>True where the twelve means are to be made from answers.</summary>
    public bool IsGuessed { get; set; }

    /// <summary>Mean of the coldest month [°C].</summary>
    public double ColdestC { get; set; }

    /// <summary>Mean of the warmest month [°C].</summary>
    public double WarmestC { get; set; }

    /// <summary>True where there are no mains.</summary>
    public bool HasNoMains { get; set; }
}
