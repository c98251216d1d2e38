namespace DesignSearch.Climate.Winters;

/// <summary>One winter, hour by hour in local standard time: first the uncounted warm-up, then the season.</summary>
/// <remarks>
/// Every array has <see cref="Hours"/> entries; entry h is the mean of the hour that starts h hours after <see cref="Start"/>.
/// Immutable once made: the arrays are shared by all who simulate this winter and must not be written. Another winter of which little
/// differs is made by <c>with</c> and shares the rest. Two winters are equal where they share every array and all else is the same.
/// </remarks>
public sealed record Winter
{
    /// <summary>For display and for the run file, for instance "typical" or "hard".</summary>
    public required string Name { get; init; }

    /// <summary>What this winter stands for.</summary>
    public required WinterKind Kind { get; init; }

    /// <summary>Where it is.</summary>
    public required Place Place { get; init; }

    /// <summary>Local standard time at the start of hour 0. The year is nominal for typical and synthetic winters.</summary>
    public required DateTime Start { get; init; }

    /// <summary>Hours at the head that are simulated but not counted.</summary>
    public required int WarmUpHours { get; init; }

    /// <summary>Hours in all, warm-up included.</summary>
    public int Hours => AirC.Length;

    /// <summary>Hours that count.</summary>
    public int SeasonHours => Hours - WarmUpHours;

    /// <summary>Outdoor air, hour mean [°C].</summary>
    public required double[] AirC { get; init; }

    /// <summary>Dew point, hour mean [°C], never above the air.</summary>
    public required double[] DewPointC { get; init; }

    /// <summary>Wind at 10 m in the open, hour mean [m/s].</summary>
    public required double[] WindMPerS { get; init; }

    /// <summary>Global irradiance on the horizontal, hour mean [W/m²].</summary>
    public required double[] GlobalWPerM2 { get; init; }

    /// <summary>Diffuse irradiance on the horizontal, hour mean [W/m²].</summary>
    public required double[] DiffuseWPerM2 { get; init; }

    /// <summary>Beam irradiance normal to the sun, hour mean [W/m²], closing with global and diffuse at the mid-hour sun.</summary>
    public required double[] BeamNormalWPerM2 { get; init; }

    /// <summary>Sky temperature, cloud included [°C]: σ·(Tsky + 273.15)⁴ is the long-wave irradiance from the sky.</summary>
    public required double[] SkyC { get; init; }

    /// <summary>Sun's zenith distance at mid-hour, geometric [°].</summary>
    public required double[] SunZenithDeg { get; init; }

    /// <summary>Sun's azimuth at mid-hour, clockwise from true north [°].</summary>
    public required double[] SunAzimuthDeg { get; init; }

    /// <summary>Irradiance normal to the sun above the atmosphere [W/m²].</summary>
    public required double[] ExtraterrestrialNormalWPerM2 { get; init; }

    /// <summary>Reflectance of the ground, snow included [0…1].</summary>
    public required double[] GroundReflectance { get; init; }

    /// <summary>Snow that comes to lie on roofs and planes; null where none is reckoned. The ground's light is <see cref="GroundReflectance"/>'s.</summary>
    public LyingSnow? Snow { get; init; }

    /// <summary>The undisturbed ground of the place.</summary>
    public required GroundClimate Ground { get; init; }

    /// <summary>Hours without mains: pump, fan and heater are dead.</summary>
    public IReadOnlyList<HourSpan> PowerCuts { get; init; } = [];

    /// <summary>Hours in which a night cover stays open though it is dark: whoever draws it was away.</summary>
    public IReadOnlyList<HourSpan> CoverLeftOpen { get; init; } = [];

    /// <summary>The week laid over a hard winter, where there is one.</summary>
    public HourSpan? StressWeek { get; init; }

    /// <summary>Sentences a report must pass on: how the winter was joined, what was filled or made up.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}
