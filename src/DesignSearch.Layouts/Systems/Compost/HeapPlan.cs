using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;
using DesignSearch.Season.Compost;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>A compost heap worked out: what it is made of, its pipes and its numbers for the season model.</summary>
internal sealed record HeapPlan
{
    /// <summary>A fresh heap may reach this; what lies in it or takes its water must bear it [°C].</summary>
    public const double HottestC = 70;

    // What lies over the highest pipe; a header tank stands so far above it; what is taken up in one (common practice, no source).
    private const double OverPipeM = 0.5;
    private const double HeaderAbovePipeM = 0.3;
    private const double HeaderTakesL = 10;

    // A mix grows by this from cold to hot: twice what water grows from 10 to 70 °C (common practice, no source).
    private const double Growth = 0.05;
    private const double LitresPerMetreOfMm2 = 1e-3;

    /// <summary>Its material.</summary>
    public required CompostMix Mix { get; init; }

    /// <summary>Pipe in the heap, in the house and between them.</summary>
    public required CompostCoil Coil { get; init; }

    /// <summary>Wrap; null without one.</summary>
    public required CompostWrap? Wrap { get; init; }

    /// <summary>The pump.</summary>
    public required Pump Pump { get; init; }

    /// <summary>Insulation of the pipes outdoors; null where the catalogue has none that serves.</summary>
    public required PipeInsulation? Sleeve { get; init; }

    /// <summary>Size [m³].</summary>
    public required double VolumeM3 { get; init; }

    /// <summary>Pipe in the heap, and as much again in the house [m].</summary>
    public required double CoilM { get; init; }

    /// <summary>Pipe between heap and house, one way [m].</summary>
    public required double OutdoorM { get; init; }

    /// <summary>Glycol by mass [0…0.5].</summary>
    public required double GlycolShare { get; init; }

    /// <summary>Own work to hire, haul and build in for one season [h].</summary>
    public required double BuildHours { get; init; }

    /// <summary>Numbers for the season model.</summary>
    public required CompostNumbers Numbers { get; init; }

    /// <summary>All pipe, out and back [m].</summary>
    public double PipeM => 2 * (CoilM + OutdoorM);

    /// <summary>What fills the pipes [L].</summary>
    public double Litres => Math.PI / 4 * Coil.BoreMm * Coil.BoreMm * LitresPerMetreOfMm2 * PipeM;

    /// <summary>Glycol in it, undiluted [L].</summary>
    public double GlycolLitres => Litres * PropyleneGlycol.VolumeShare(GlycolShare);

    /// <summary>Where ice begins to form in it [°C].</summary>
    public double FreezesAtC => PropyleneGlycol.FreezesAtC(GlycolShare);

    /// <summary>Header tanks side by side.</summary>
    public double HeaderTanks => Math.Ceiling(Litres * Growth / HeaderTakesL);

    /// <summary>Height that the header tank needs [m].</summary>
    public double HeaderM => Math.Max(0, CompostHeap.HeightM(VolumeM3) - OverPipeM) + HeaderAbovePipeM;
}
