using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Skin;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Systems.Skin;

/// <summary>What is added to the skin of a house, null for what is not.</summary>
/// <param name="NightCover">Cover drawn at night.</param>
/// <param name="Lining">Lining under the cover.</param>
/// <param name="Sealing">Sealing of gaps.</param>
/// <param name="PerimeterBoard">Board at the floor's edge.</param>
/// <param name="WindBreak">Net or hedge against the wind.</param>
public sealed record Skin(NightCover? NightCover, Lining? Lining, Sealing? Sealing, PerimeterBoard? PerimeterBoard, WindBreak? WindBreak)
{
    // Share of the daylight that comes in by the wall away from the sun, per share of the cover that it is (estimate, no source).
    private const double ShadedWallLight = 0.4;

    /// <summary>True where nothing is added.</summary>
    public bool IsBare => NightCover is null && Lining is null && Sealing is null && PerimeterBoard is null && WindBreak is null;

    /// <summary>
    /// A board lets no light through, so it covers only the long wall away from the sun [m²], and that of a lean-to is solid: 0 where none of it is covered.
    /// </summary>
    public static double ShadedWallM2(Greenhouse house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house.Shape == HouseShape.LeanTo ? 0 : house.LengthM * (house.EavesM - house.BaseWall.HeightM);
    }

    /// <summary>The numbers of a house with this skin.</summary>
    /// <param name="house">The house as it stands.</param>
    public HouseNumbers Numbers(Greenhouse house) => On(BareHouse.Numbers(house), house);

    /// <summary>The numbers of a house with this skin.</summary>
    /// <param name="numbers">Its numbers without.</param>
    /// <param name="house">The house as it stands.</param>
    public HouseNumbers On(HouseNumbers numbers, Greenhouse house)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        ArgumentNullException.ThrowIfNull(house);
        var bare = 1 / house.MeanCoverUWPerM2K;
        var lined = house.Door.AreaM2 > 0 ? house.LinedM2 / numbers.CoverAreaM2 : 1;
        var (liningR, light) = Lined(house, numbers.CoverAreaM2, bare, lined);
        var leakage = Sealing?.LeakageFactor ?? 1;
        return numbers with
        {
            LiningResistanceM2KPerW = liningR,
            NightCoverResistanceM2KPerW = NightCover is null ? 0 : Spread(bare + liningR, NightCover.ResistanceM2KPerW, (1 - NightCover.EdgeLeak) * lined),
            LiningTransmittance = light,
            NightCoverDrawnBy = NightCover?.Drive switch
            {
                CoverDrive.Sensor => CoverDrawing.Sensor,
                CoverDrive.Clock => CoverDrawing.Clock,
                CoverDrive.Hand => CoverDrawing.Hand,
                _ => CoverDrawing.None,
            },
            EdgeLossWPerMK = house.EdgeShare * (PerimeterBoard is null ? house.EdgeLossWPerMK : Math.Min(house.EdgeLossWPerMK, PerimeterBoard.EdgeLossWPerMK)),
            AirChangesPerHour = house.StillAirChangesPerHour * leakage,
            AirChangesPerHourPerMPerS = house.AirChangesPerHourPerMPerS * leakage * (WindBreak?.WindFactor ?? 1),
        };
    }

    /// <summary>Resistance that, over the whole area, adds as much as one that covers only a share of it [m²K/W].</summary>
    /// <param name="under">What lies under it [m²K/W], above 0.</param>
    /// <param name="added">What is laid over a share [m²K/W].</param>
    /// <param name="share">That share [0…1].</param>
    public static double Spread(double under, double added, double share) => 1 / (share / (under + added) + (1 - share) / under) - under;

    private (double ResistanceM2KPerW, double Light) Lined(Greenhouse house, double coverM2, double bare, double lined)
    {
        if (Lining is null)
            return (0, 1);
        if (Lining.Transmittance > 0)
            return (lined < 1 ? Spread(bare, Lining.ResistanceM2KPerW, lined) : Lining.ResistanceM2KPerW, Lining.Transmittance);
        var share = ShadedWallM2(house) / coverM2;
        return (Spread(bare, Lining.ResistanceM2KPerW, share), 1 - ShadedWallLight * share);
    }
}
