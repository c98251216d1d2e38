using DesignSearch.Fitting.Logs;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Fitting.Estimate;

/// <summary>What a log tells of a house.</summary>
public sealed record FitResult
{
    /// <summary>By which share the loss of another model's houses is missed, root of the mean square (ten houses, a check of its own).</summary>
    public const double OtherModelsMissed = 0.06;

    /// <summary>By which share it comes out too high in common where a fan stirs the air so much that it never rises by itself (likewise).</summary>
    public const double StirredTooHigh = 0.08;

    /// <summary>The log, its clock set right.</summary>
    public required HouseLog Log { get; init; }

    /// <summary>True where sky, wind and sun were recorded on those days; false where they were made.</summary>
    public required bool IsWeatherRecorded { get; init; }

    /// <summary>What was said before anything was fitted: what the log can tell and what it cannot.</summary>
    public required IReadOnlyList<string> Before { get; init; }

    /// <summary>What is odd about the log.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>Why the loss was not learnt; empty where it was.</summary>
    public required string Refusal { get; init; }

    /// <summary>Why the sun was not learnt; empty where it was.</summary>
    public string SunRefusal { get; init; } = "";

    /// <summary>Every night.</summary>
    public required IReadOnlyList<NightRow> Nights { get; init; }

    /// <summary>Loss, inner store, its coupling, sun.</summary>
    public required IReadOnlyList<FigureFound> Figures { get; init; }

    /// <summary>Air inside as the fit has it in the nights that are known, NaN elsewhere [°C].</summary>
    public required double[] PredictedC { get; init; }

    /// <summary>The same of fits that did not see the night, NaN elsewhere [°C].</summary>
    public required double[] HeldOutC { get; init; }

    /// <summary>Air in the nights that a fit did not see, measured against predicted, root of the mean square of the hours [K]; NaN without any.</summary>
    public required double HeldOutRmsK { get; init; }

    /// <summary>Loss of the house by its drawing [W/K].</summary>
    public required double DrawnWPerK { get; init; }

    /// <summary>Floor of the house [m²].</summary>
    public required double FloorM2 { get; init; }

    /// <summary>Nights that were fitted and heated.</summary>
    public required int HeatedNights { get; init; }

    /// <summary>True where the loss was learnt.</summary>
    public bool IsLearnt => Refusal.Length == 0;

    /// <summary>Loss against the drawing.</summary>
    public FigureFound Loss => Figures[0];

    /// <summary>Sun against the drawing.</summary>
    public FigureFound Sun => Figures[^1];

    /// <summary>What searches are to use; null where the loss was not learnt.</summary>
    public HouseFit? Fit => !IsLearnt ? null : new()
    {
        Loss = new(Loss.Value, Loss.Low, Loss.High, true),
        Sun = new(Sun.Value, Sun.Low, Sun.High, Sun.IsLearnt),
        StoreJPerK = Figures[1].Value * FloorM2,
        CouplingWPerK = Figures[2].Value * FloorM2,
        Nights = Nights.Count(n => n.Use == NightUse.Fitted),
        Log = [.. Log.Files.Select(f => (f.Name, f.Sha256))],
    };
}
