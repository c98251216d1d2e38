using DesignSearch.Physics;
using DesignSearch.Season.Glass;
using DesignSearch.Season.House;

namespace DesignSearch.Season.Tests;

/// <summary>
/// A lean-to in a steady state, its air held: every facet of the cover with an inner and an outer surface of its own and its own share of sky, where the kernel
/// has one of each. Solved by going round until nothing moves. The figures of the films stand here anew.
/// </summary>
internal sealed class FacetByFacet
{
    private const double Convection = 1.4, WallFilm = 2.5, Radiant = 4.1, Benches = 0.5, Vapour = 1, StillFilm = 2.8, WindFilm = 3, RoofWind = 0.6, Emits = 0.84, FloorUp = 5, FloorDown = 0.7, Soil = 1.2;

    public required IReadOnlyList<(Facet Facet, double SkyView)> Facets { get; init; }

    public required double SheetM2KPerW { get; init; }

    public required double FloorM2 { get; init; }

    public required double EdgeWPerK { get; init; }

    public required double LeakWPerK { get; init; }

    public required WallNumbers Wall { get; init; }

    /// <summary>Heat that holds the air [W], and what of it the room behind the wall gives.</summary>
    public (double HeaterW, double RoomW) Hold(double airC, double outsideC, double skyC, double windMPerS, double groundC, double behindC)
    {
        var n = Facets.Count;
        var (inner, outer) = (new double[n], new double[n]);
        var (floor, face, mass) = (airC, airC, airC);
        var cover = Facets.Sum(f => f.Facet.AreaM2);
        var wallFloor = 0.2 * Wall.AreaM2 * Radiant;
        var outerFilm = StillFilm + (WindFilm * RoofWind * windMPerS);
        // Night in every hour: the ground outside by its own balance, found by halving.
        var (low, high) = (outsideC - 40, outsideC);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            var gains = ((4 + (4 * RoofWind * windMPerS)) * (outsideC - middle)) + 30
                + (0.97 * Radiation.StefanBoltzmannWPerM2K4 * (Math.Pow(skyC + Temperature.ZeroCelsiusK, 4) - Math.Pow(middle + Temperature.ZeroCelsiusK, 4)));
            (low, high) = gains > 0 ? (middle, high) : (low, middle);
        }

        var groundOutside = high;
        var around = Math.Pow(groundOutside + Temperature.ZeroCelsiusK, 3);
        // Half of the surface layer and the three below it, in series, end at the undisturbed ground.
        var soil = Soil * FloorM2 / (0.025 + 0.2 + 0.25 + 0.5);
        for (var round = 0; round < 20000; round++)
        {
            var floorFilm = FloorFilm(floor - airC);
            var (floorG, floorQ) = ((floorFilm * FloorM2) + wallFloor + soil + EdgeWPerK, (floorFilm * FloorM2 * airC) + (wallFloor * face) + (soil * groundC) + (EdgeWPerK * outsideC));
            var (faceG, faceQ) = ((WallFilm * Wall.AreaM2) + wallFloor + (Wall.AreaM2 / Wall.InnerResistanceM2KPerW),
                (WallFilm * Wall.AreaM2 * airC) + (wallFloor * floor) + (Wall.AreaM2 / Wall.InnerResistanceM2KPerW * mass));
            for (var i = 0; i < n; i++)
            {
                var (area, share) = (Facets[i].Facet.AreaM2, Facets[i].Facet.AreaM2 / cover);
                var toAir = (Convection * Math.Cbrt(Math.Abs(airC - inner[i])) * area) + (Radiant * Benches * FloorM2 * share);
                var toFloor = (((Radiant * FloorM2) - wallFloor) + (Vapour * FloorM2 * Math.Clamp((floor - inner[i]) / 2, 0, 1))) * share;
                var toFace = 0.8 * Wall.AreaM2 * Radiant * share;
                var sheet = area / SheetM2KPerW;
                inner[i] = ((toAir * airC) + (toFloor * floor) + (toFace * face) + (sheet * outer[i])) / (toAir + toFloor + toFace + sheet);
                var (c, s) = (outer[i] + Temperature.ZeroCelsiusK, skyC + Temperature.ZeroCelsiusK);
                var sky = Emits * Radiation.StefanBoltzmannWPerM2K4 * area * Facets[i].SkyView * ((c * c) + (s * s)) * (c + s);
                var (air, seen) = (area * outerFilm, area * 4 * Emits * Radiation.StefanBoltzmannWPerM2K4 * (1 - Facets[i].SkyView) * around);
                outer[i] = ((sheet * inner[i]) + (sky * skyC) + (air * outsideC) + (seen * groundOutside)) / (sheet + sky + air + seen);
                (floorG, floorQ) = (floorG + toFloor, floorQ + (toFloor * inner[i]));
                (faceG, faceQ) = (faceG + toFace, faceQ + (toFace * inner[i]));
            }

            (floor, face) = (floorQ / floorG, faceQ / faceG);
            var (into, behind) = (Wall.AreaM2 / Wall.InnerResistanceM2KPerW, Wall.AreaM2 / Wall.OuterResistanceM2KPerW);
            mass = ((into * face) + (behind * behindC)) / (into + behind);
        }

        var toCover = Enumerable.Range(0, n).Sum(i => ((Convection * Math.Cbrt(Math.Abs(airC - inner[i])) * Facets[i].Facet.AreaM2) + (Radiant * Benches * FloorM2 * Facets[i].Facet.AreaM2 / cover)) * (airC - inner[i]));
        var heat = toCover + (FloorFilm(floor - airC) * FloorM2 * (airC - floor)) + (WallFilm * Wall.AreaM2 * (airC - face)) + (LeakWPerK * (airC - outsideC));
        return (heat, Wall.AreaM2 / Wall.OuterResistanceM2KPerW * (behindC - mass));
    }

    private static double FloorFilm(double warmerK) => ((FloorUp + FloorDown) / 2) + ((FloorUp - FloorDown) / 2 * Math.Clamp(warmerK, -1, 1));
}
