using DesignSearch.Season.House;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Walls;

/// <summary>A solid wall round the foot of the house, its mass in its middle; a part of it may stand in the ground.</summary>
/// <param name="OpenM2">Towards the open air [m²]; 0 or more.</param>
/// <param name="BuriedM2">Towards the ground [m²]; 0 or more.</param>
/// <param name="ResistanceM2KPerW">From surface to surface, without films [m²K/W], above 0.</param>
/// <param name="SoilResistanceM2KPerW">Of the soil between what is buried and undisturbed ground [m²K/W], 0 or more.</param>
/// <param name="CapacityJPerM2K">Heat capacity [J/(m²K)], 0 or more.</param>
public sealed record BaseWallNumbers(double OpenM2, double BuriedM2, double ResistanceM2KPerW, double SoilResistanceM2KPerW, double CapacityJPerM2K) : SourceNumbers
{
    /// <inheritdoc/>
    public override bool IsPresent => OpenM2 + BuriedM2 > 0;

    /// <inheritdoc/>
    public override double OutwardWPerK => OpenM2 / (1 / SheetResistance.InsideFilmWPerM2K + ResistanceM2KPerW + 1 / SheetResistance.OutsideFilmWPerM2K);

    internal override SourceKind Kind => WallFlows.BaseKind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new BlockRunner<BaseWallBlock<T>, T>(Kind, start, batches);

    /// <summary>The numbers as the kernel's terms.</summary>
    internal BaseWallTerms<double> ToTerms(double stepSeconds, double startC, double groundC)
    {
        var (inner, half) = (1 / SheetResistance.InsideFilmWPerM2K + ResistanceM2KPerW / 2, ResistanceM2KPerW / 2);
        double Store(double area) => area > 0 ? Math.Max(Least, CapacityJPerM2K) * area * (1 / stepSeconds) : 1;
        return new()
        {
            OpenStore = Store(OpenM2),
            OpenInside = OpenM2 / inner,
            OpenOutside = OpenM2 / (half + 1 / SheetResistance.OutsideFilmWPerM2K),
            BuriedStore = Store(BuriedM2),
            BuriedInside = BuriedM2 / inner,
            BuriedGround = BuriedM2 / (half + SoilResistanceM2KPerW),
            OpenStartC = OpenM2 > 0 ? startC : 0,
            BuriedStartC = BuriedM2 > 0 ? groundC : 0,
        };
    }

    // A wall of no capacity still has a surface [J/(m²K)].
    private const double Least = 1;
}
