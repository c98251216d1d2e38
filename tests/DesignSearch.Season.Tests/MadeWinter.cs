using DesignSearch.Climate;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.Tests;

/// <summary>Artificial winters and planes, simple enough to see through.</summary>
internal static class MadeWinter
{
    public static Winter Of(int days, int warmUpDays = 0, double meanC = 1, double swingK = 6, double noonWPerM2 = 400, double windMPerS = 2, double skyBelowK = 14, IReadOnlyList<HourSpan>? powerCuts = null)
    {
        var n = days * 24;
        double[] Each(Func<int, double> f) => [.. Enumerable.Range(0, n).Select(f)];
        static double Day(int h) => Math.Max(0, Math.Cos(Math.PI * (h % 24 + 0.5 - 12) / 9));
        static double Lit(int h) => Math.Abs(h % 24 + 0.5 - 12) < 4.5 ? Day(h) : 0;
        var air = Each(h => meanC + swingK * Math.Cos(2 * Math.PI * (h % 24 - 14) / 24) + 3 * Math.Sin(h / 61.0));
        var global = Each(h => noonWPerM2 * Lit(h) * (0.6 + 0.4 * Math.Sin(h / 24 * 1.7)));
        return new Winter
        {
            Name = "made",
            Kind = WinterKind.Typical,
            Place = new Place("Nowhere", 47, 10, 400, 1),
            Start = new DateTime(2001, 11, 1),
            WarmUpHours = warmUpDays * 24,
            AirC = air,
            DewPointC = Array.ConvertAll(air, t => t - 3),
            WindMPerS = Each(h => Math.Max(0, windMPerS * (1 + 0.5 * Math.Sin(h / 7.0)))),
            GlobalWPerM2 = global,
            DiffuseWPerM2 = Array.ConvertAll(global, g => 0.4 * g),
            BeamNormalWPerM2 = Array.ConvertAll(global, g => 0.9 * g),
            SkyC = Array.ConvertAll(air, t => t - skyBelowK),
            SunZenithDeg = Each(h => Lit(h) > 0 ? 70 : 110),
            SunAzimuthDeg = Each(h => 180 + 15 * (h % 24 - 11.5)),
            ExtraterrestrialNormalWPerM2 = Each(_ => 1400),
            GroundReflectance = Each(_ => 0.2),
            Ground = new GroundClimate(9, 9, 35),
            PowerCuts = powerCuts ?? [],
        };
    }

    /// <summary>A plane that turns to the side with the sign of <paramref name="turn"/>: mornings of negative hour angle at -1.</summary>
    public static PlaneIrradiance Plane(Winter winter, double turn = 0)
    {
        double Cos(int h)
        {
            var hour = h % 24 + 0.5 - 12;
            return Math.Max(0, Math.Cos((15 * hour - turn * 30 * Math.Sign(hour)) * Math.PI / 180));
        }

        var cos = Enumerable.Range(0, winter.Hours).Select(Cos).ToArray();
        return new PlaneIrradiance
        {
            BeamWPerM2 = [.. cos.Select((c, h) => c * winter.BeamNormalWPerM2[h])],
            SkyWPerM2 = Array.ConvertAll(winter.DiffuseWPerM2, d => 0.8 * d),
            GroundWPerM2 = Array.ConvertAll(winter.GlobalWPerM2, g => 0.03 * g),
            CosIncidence = cos,
            Moves = 0,
            TravelDeg = 0,
        };
    }

    public static WinterForcing Forcing(Winter winter, SeasonAssumptions? assumptions = null, Func<int, bool>? isCheapHour = null) =>
        WinterForcing.Prepare(winter, Array.ConvertAll(winter.GlobalWPerM2, g => 24 * g), assumptions ?? SeasonAssumptions.Default, isCheapHour);
}
