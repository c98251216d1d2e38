namespace DesignSearch.Climate.Plane;

/// <summary>How the diffuse light is spread over the sky.</summary>
public enum SkySplit
{
    /// <summary>Perez et al. (1990): even sky, light around the sun, horizon band.</summary>
    Perez,

    /// <summary>Hay and Davies (1980): even sky and light around the sun; a second opinion.</summary>
    HayDavies,
}
