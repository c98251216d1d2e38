using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.Covers;
using DesignSearch.Season.Glass;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Tests;

/// <summary>A measured house as far as its report names it: a tunnel or gable house as a box with a roof, in a winter made from monthly means of its place.</summary>
internal sealed record MeasuredHouse
{
    private static readonly PlaneCache Planes = new(100_000_000);

    public required double LengthM { get; init; }

    public required double WidthM { get; init; }

    public double HeightM { get; init; } = 2.2;

    /// <summary>Catalogue U-value of the cover [W/(m²K)].</summary>
    public required double U { get; init; }

    public int Layers { get; init; } = 1;

    /// <summary>The sheets or films of the cover in place of <see cref="U"/>; null where that is all that is known.</summary>
    public CoverMakeUp? MakeUp { get; init; }

    /// <summary>Light at normal incidence, dirt and frame allowed for.</summary>
    public double Light { get; init; } = 0.75;

    /// <summary>Air changes [1/h]; a shut film house has about half a change in an ordinary wind.</summary>
    public double Leak { get; init; } = 0.3;

    public double LeakPerWind { get; init; } = 0.1;

    public double NightResistance { get; init; }

    public BarrelNumbers Barrels { get; init; } = BarrelNumbers.None;

    public HeaterNumbers Heater { get; init; } = HeaterNumbers.None;

    public WallNumbers Wall { get; init; } = WallNumbers.None;

    /// <summary>Gables of a lean-to are part of its wall.</summary>
    public bool SolidEnds { get; init; }

    /// <summary>What greenhouse practice states of the whole house, in place of <see cref="U"/> [W/(m²K)]; null where a sheet's figure is meant.</summary>
    public double? HouseU { get; init; }

    public double CoverM2 => Facets.Sum(f => f.AreaM2);

    private double FloorM2 => LengthM * WidthM;

    private double[] Sun(Winter winter) =>
        HouseSun.TransmittedW(winter, [.. Facets.Select(f => new Pane(f, new Glazing(Layers, Light)))], (w, mount, _) => Planes.Get(w, mount));

    // Upright sides to two thirds of the height, then two slopes; a lean-to has its wall in place of the northern side and slope.
    private IReadOnlyList<Facet> Facets
    {
        get
        {
            var (side, rise) = (LengthM * HeightM * 2 / 3, HeightM / 3);
            if (Wall.AreaM2 > 0)
                return SolidEnds ? [new(LengthM * Math.Sqrt(WidthM * WidthM + HeightM * HeightM), 45, 180)] : [new(LengthM * Math.Sqrt(WidthM * WidthM + HeightM * HeightM), 45, 180), new(0.6 * WidthM * HeightM, 90, 90), new(0.6 * WidthM * HeightM, 90, 270)];
            var slope = LengthM * Math.Sqrt(WidthM * WidthM / 4 + rise * rise);
            var tilt = Math.Atan2(rise, WidthM / 2) * 180 / Math.PI;
            return [new(side, 90, 0), new(side, 90, 180), new(slope, tilt, 0), new(slope, tilt, 180), new(0.85 * WidthM * HeightM, 90, 90), new(0.85 * WidthM * HeightM, 90, 270)];
        }
    }

    private Installation Plant => HouseU is { } u ? Drawn with { House = HouseUValue.Met(Drawn.House, u) } : Drawn;

    private Installation Drawn => new(
        new HouseNumbers
        {
            FrostLimitC = 0,
            CoverAreaM2 = CoverM2,
            CoverResistanceM2KPerW = MakeUp?.ResistanceM2KPerW ?? SheetResistance.FromUValue(U),
            CoverRadiation = MakeUp?.LongWave ?? CoverRadiation.Opaque,
            NightCoverResistanceM2KPerW = NightResistance,
            SkyViewFactor = Facets.Sum(f => f.AreaM2 * (1 + Math.Cos(f.TiltDeg * Math.PI / 180)) / 2) / CoverM2,
            FloorAreaM2 = FloorM2,
            VolumeM3 = FloorM2 * HeightM * 0.83,
            PerimeterM = 2 * (LengthM + WidthM),
            EdgeLossWPerMK = 0.8,
            AirChangesPerHour = Leak,
            AirChangesPerHourPerMPerS = LeakPerWind,
            VentWPerK = 12 * FloorM2,
            Wall = Wall,
        },
        Barrels,
        TankNumbers.None,
        CollectorNumbers.None,
        PipeRunNumbers.None,
        ReleaseNumbers.None,
        Heater);

    /// <summary>Every counted hour.</summary>
    public List<HourRow> Hours(Winter winter)
    {
        var rows = new List<HourRow>();
        Run(winter, rows.Add);
        return rows.Where(r => r.Hour >= winter.WarmUpHours).ToList();
    }

    public Outcome Run(Winter winter, Action<HourRow>? hourly = null)
    {
        var sun = Sun(winter);
        return SeasonSimulator.Run(WinterForcing.Prepare(winter, sun, SeasonAssumptions.Default), new LayoutCase(Plant, null), hourly);
    }

    /// <summary>Heat that rises from the soil into its uppermost 5 cm between 18 and 6 h, mean of the counted nights [W/m²].</summary>
    public double NightSoilFlux(Winter winter)
    {
        var forcing = WinterForcing.Prepare(winter, Sun(winter), SeasonAssumptions.Default);
        var c = HouseTerms.From(Plant, forcing.Assumptions);
        var block = new HouseBlock<Lane1>([c], 300, winter.AirC[0], HouseTerms.SoilStartC(forcing, 1), HouseTerms.SoilStartC(forcing, 2), HouseTerms.SoilStartC(forcing, 3));
        var offers = new Offer<Lane1>[HouseBlock<Lane1>.OwnOffers];
        var (sum, count) = (0.0, 0);
        for (var h = 0; h < winter.Hours; h++)
        {
            block.Hour(forcing.Hours[h]);
            for (var s = 0; s < 12; s++)
            {
                block.Eliminate();
                block.Reduce(Lane1.Of(0));
                block.Decide(Lane1.Of(0), offers);
                block.Settle();
            }

            if (h < winter.WarmUpHours || winter.Start.AddHours(h).Hour is >= 6 and < 18)
                continue;
            sum += c.FloorSoil * (Pack.At(block.Soil1, 0) - Pack.At(block.Floor, 0)) / FloorM2;
            count++;
        }

        return sum / count;
    }

    public static double[] Daily(IEnumerable<HourRow> rows, Func<HourRow, double> what, Func<IEnumerable<double>, double> of) =>
        [.. rows.GroupBy(r => r.LocalTime.Date).Select(d => of(d.Select(what)))];

    /// <summary>Daily minimum inside less daily minimum outside, mean over the days [K].</summary>
    public static double Lift(IReadOnlyList<HourRow> rows) => Daily(rows, r => r.AirMeanC, d => d.Min()).Average() - Daily(rows, r => r.OutsideC, d => d.Min()).Average();
}
