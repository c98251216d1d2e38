namespace DesignSearch.Climate.Weather;

/// <summary>Where a value of a weather record comes from.</summary>
public enum FieldOrigin
{
    /// <summary>Read from an instrument.</summary>
    Measured,

    /// <summary>Computed by the provider, from satellites or weather models.</summary>
    Modelled,

    /// <summary>A gap filled here from its neighbours.</summary>
    Filled,

    /// <summary>Made here from other columns or monthly means.</summary>
    Synthesised,
}
