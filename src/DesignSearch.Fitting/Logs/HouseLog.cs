namespace DesignSearch.Fitting.Logs;

/// <summary>A log of a house, hour by hour in local standard time; NaN where nothing is known.</summary>
public sealed record HouseLog
{
    /// <summary>Local standard time at the start of hour 0, a midnight.</summary>
    public required DateTime Start { get; init; }

    /// <summary>Air in the house, hour means [°C].</summary>
    public required double[] InsideC { get; init; }

    /// <summary>Air outside, hour means [°C].</summary>
    public required double[] OutsideC { get; init; }

    /// <summary>Heat of the heater, hour means [W]; 0 throughout where there was none.</summary>
    public required double[] HeaterW { get; init; }

    /// <summary>Heat by system of a house that was built, hour means [W], by the name of the column.</summary>
    public IReadOnlyDictionary<string, double[]> SystemsW { get; init; } = new Dictionary<string, double[]>();

    /// <summary>True where the log has a column of a heater.</summary>
    public required bool HasHeater { get; init; }

    /// <summary>True where the air outside was measured at a weather station and not beside the house.</summary>
    public required bool OutsideIsStation { get; init; }

    /// <summary>True where the heater is known only as running or resting, looked at this seldom [min]; 0 where its power or its meter is known.</summary>
    public int SwitchStepMinutes { get; init; }

    /// <summary>The files that tell inside, outside and heater, each with a clock of its own; empty where several tell the same.</summary>
    internal (string Inside, string Outside, string Heater) Clocks { get; init; } = ("", "", "");

    /// <summary>The files.</summary>
    public required IReadOnlyList<LogFile> Files { get; init; }

    /// <summary>What was changed or left out while it was read.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>How many hours it spans.</summary>
    public int Hours => InsideC.Length;
}
