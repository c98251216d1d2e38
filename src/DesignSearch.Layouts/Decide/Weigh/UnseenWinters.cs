namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What winters that a layout was not chosen on did to it.</summary>
public sealed record UnseenWinters
{
    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>How many had no frost hour.</summary>
    public required int Held { get; init; }

    /// <summary>Lower end of the 95 % interval of the share that would hold among endless such winters [0…1].</summary>
    public required double HeldAtLeast { get; init; }

    /// <summary>Upper end of that interval [0…1].</summary>
    public required double HeldAtMost { get; init; }

    /// <summary>How many had no frost hour in the bare house.</summary>
    public required int BareHeld { get; init; }

    /// <summary>Lowest hour mean inside, of all [°C].</summary>
    public required double LowestAirC { get; init; }

    /// <summary>Start of that hour, local standard time; the year is nominal.</summary>
    public required DateTime WorstHour { get; init; }

    /// <summary>Outdoor air in that hour [°C].</summary>
    public required double OutsideThenC { get; init; }

    /// <summary>Most frost hours of one of them.</summary>
    public required int WorstFrostHours { get; init; }

    /// <summary>Mean frost degree-hours of one of them [K·h].</summary>
    public required double FrostDegreeHoursKh { get; init; }

    /// <summary>Frost degree-hours of the winters it was chosen on, the hard one left out [K·h].</summary>
    public required double ChosenFrostDegreeHoursKh { get; init; }

    /// <summary>Stand-by electricity: least of one winter [kWh].</summary>
    public required double LeastStandbyKwh { get; init; }

    /// <summary>Stand-by electricity: mean of a winter [kWh].</summary>
    public required double MeanStandbyKwh { get; init; }

    /// <summary>Stand-by electricity: most of one winter [kWh].</summary>
    public required double MostStandbyKwh { get; init; }

    /// <summary>Stand-by electricity of the winters it was chosen on, the hard one left out [kWh].</summary>
    public required double ChosenStandbyKwh { get; init; }

    /// <summary>How many held, in a sentence with its interval.</summary>
    public required string Sentence { get; init; }

    /// <summary>Whether and by how much the winters it was chosen on flattered it, in a sentence.</summary>
    public required string Flattery { get; init; }
}
