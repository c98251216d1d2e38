namespace DesignSearch.Climate.Winters;

/// <summary>How winters are made from a record or from monthly means.</summary>
public sealed record WinterOptions
{
    /// <summary>Reflectance of bare ground, 0 to 1; 0.2 is the usual figure for grass and soil.</summary>
    public double GroundReflectance { get; init; } = 0.2;

    /// <summary>Share of each month with snow on the ground, 0 to 1 (12 values, January first); none: no snow.</summary>
    public IReadOnlyList<double>? SnowCoverByMonth { get; init; }

    /// <summary>Reflectance of lying snow, 0.5 (old) to 0.85 (new).</summary>
    public double SnowReflectance { get; init; } = 0.6;

    /// <summary>The hard winter comes once in so many years, over 1.</summary>
    public double HardReturnYears { get; init; } = 10;

    /// <summary>The builder's own lowest temperature for the hard winter [°C]; takes the place of the return level.</summary>
    public double? HardLowestC { get; init; }

    /// <summary>Standard deviation of the lowest temperature from year to year [K]: about 2 by the sea, 3 in a mild valley, 4 inland.</summary>
    public double YearlyLowestSdK { get; init; } = 3;

    /// <summary>The lowest temperature the builder knows of; it beats what the weather alone says about hard winters.</summary>
    public KnownLowest? Known { get; init; }

    /// <summary>Length of a power cut on the coldest night of the hard winter [h]; 0 for none.</summary>
    public int PowerCutHours { get; init; }
}
