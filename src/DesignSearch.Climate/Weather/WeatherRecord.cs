using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Weather;

/// <summary>A weather file as hour means of local standard time, with what was done to it.</summary>
/// <remarks>Every array has as many entries as the record has hours; entry h is the mean of the hour that starts h hours after <see cref="Start"/>.</remarks>
public sealed class WeatherRecord
{
    private static readonly string[] Words = ["measured", "computed by the provider", "filled here from the hours around", "made here from other figures"];

    /// <summary>Where it is, and the clock of the record.</summary>
    public required Place Place { get; init; }

    /// <summary>Name of the file, without its folder.</summary>
    public required string Source { get; init; }

    /// <summary>For display: the years the data come from.</summary>
    public required string Period { get; init; }

    /// <summary>True when months of several years were put together; the year of <see cref="Start"/> is then nominal.</summary>
    public required bool IsTypicalYear { get; init; }

    /// <summary>Local standard time at the start of hour 0.</summary>
    public required DateTime Start { get; init; }

    /// <summary>Air [°C].</summary>
    public required double[] AirC { get; init; }

    /// <summary>Dew point [°C], never above the air.</summary>
    public required double[] DewPointC { get; init; }

    /// <summary>Wind at 10 m [m/s].</summary>
    public required double[] WindMPerS { get; init; }

    /// <summary>Global irradiance on the level [W/m²].</summary>
    public required double[] GlobalWPerM2 { get; init; }

    /// <summary>Diffuse irradiance on the level [W/m²], closing with global and beam at the mid-hour sun.</summary>
    public required double[] DiffuseWPerM2 { get; init; }

    /// <summary>Beam normal to the mid-hour sun [W/m²].</summary>
    public required double[] BeamNormalWPerM2 { get; init; }

    /// <summary>Long-wave irradiance from the sky [W/m²], where the file has it or the cloud it can be made from.</summary>
    public double[]? SkyLongWaveWPerM2 { get; init; }

    /// <summary>
    /// Stretches of a record of several years in which too much is missing: what stands there is the usual weather of the season, for display
    /// only, and no winter that touches one may be used.
    /// </summary>
    public IReadOnlyList<HourSpan> Unknown { get; init; } = [];

    /// <summary>Where the values of a field come from, hour by hour; long-wave from the sky is in it only where the record has it.</summary>
    public required IReadOnlyDictionary<WeatherField, FieldOrigin[]> Origins { get; init; }

    /// <summary>Middle of the radiation interval against the stamp [min]: as the format says it, and as the sun says it.</summary>
    public required SunFit SunFit { get; init; }

    /// <summary>Sentences: what is hard to believe of the file; to be read before its figures.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>Sentences: what was repaired, filled, made up or looks odd.</summary>
    public required IReadOnlyList<string> Repairs { get; init; }

    /// <summary>The table a person looks at first.</summary>
    public required WeatherSummary Summary { get; init; }

    /// <summary>The coldest runs of three days and more, coldest first.</summary>
    public IReadOnlyList<WeatherSpell> ColdSpells => SpellFinder.Cold(WinterDay.Of(this));

    /// <summary>The longest runs of dark days in the cold half of the year.</summary>
    public IReadOnlyList<WeatherSpell> DarkRuns => SpellFinder.Dark(WinterDay.Of(this), Place);

    /// <summary>Share of the hours of a field that has each origin; only origins that occur.</summary>
    /// <param name="field">One that <see cref="Origins"/> holds.</param>
    public IReadOnlyDictionary<FieldOrigin, double> Shares(WeatherField field) =>
        Origins[field].GroupBy(o => o).OrderBy(g => g.Key).ToDictionary(g => g.Key, g => g.Count() / (double)Origins[field].Length);

    /// <summary>The same in words, for instance "measured 98 %, filled here 2 %".</summary>
    /// <param name="field">Air, DewPoint, Wind, Global or Diffuse.</param>
    public string SharesInWords(WeatherField field) =>
        string.Join(", ", Shares(field).Select(s => FormattableString.Invariant($"{Words[(int)s.Key]} {100 * s.Value:0.#} %")));

    /// <summary>Hours in the record.</summary>
    public int Hours => AirC.Length;
}
