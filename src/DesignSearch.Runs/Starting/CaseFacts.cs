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

    /// <summary>The shape's word.</summary>
    public string Shape { get; set; } = "";

    /// <summary>Width of the house [m].</summary>
    public double WidthM { get; set; }

    /// <summary>Its low edge [m].</summary>
    public double EavesM { get; set; }

    /// <summary>Its high edge [m].</summary>
    public double RidgeM { get; set; }

    /// <summary>Height of the wall round its foot [m]; 0 without one.</summary>
    public double BaseWallM { get; set; }

    /// <summary>True where there are no mains.</summary>
    public bool HasNoMains { get; set; }
}
