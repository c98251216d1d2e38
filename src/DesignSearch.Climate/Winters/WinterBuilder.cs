using DesignSearch.Climate.Sun;
using DesignSearch.Physics;

namespace DesignSearch.Climate.Winters;

/// <summary>Completes hours of weather into a winter: sun, beam, sky, ground.</summary>
internal static class WinterBuilder
{
    private const double SameWPerM2 = 1e-6;

    public static Winter Build(
        string name,
        WinterKind kind,
        Place place,
        DateTime start,
        int warmUpHours,
        HourWeather weather,
        GroundClimate ground,
        WinterOptions options,
        IReadOnlyList<string> remarks)
    {
        var n = weather.Hours;
        var sun = new SunHours(place, start, n);
        var (beam, diffuse) = (new double[n], new double[n]);
        for (var h = 0; h < n; h++)
        {
            var own = weather.BeamNormalWPerM2?[h] ?? double.NaN;
            (beam[h], diffuse[h]) = double.IsNaN(own)
                ? BeamSplit.Close(weather.GlobalWPerM2[h], weather.DiffuseWPerM2[h], sun.ZenithDeg[h], sun.NormalWPerM2[h])
                : BeamSplit.Around(weather.GlobalWPerM2[h], own, sun.ZenithDeg[h]);
        }

        return new()
        {
            Name = name,
            Kind = kind,
            Place = place,
            Start = start,
            WarmUpHours = warmUpHours,
            AirC = weather.AirC,
            DewPointC = weather.DewPointC,
            WindMPerS = weather.WindMPerS,
            GlobalWPerM2 = weather.GlobalWPerM2,
            DiffuseWPerM2 = diffuse,
            BeamNormalWPerM2 = beam,
            SkyC = SkyOf(place, start, weather),
            SunZenithDeg = sun.ZenithDeg,
            SunAzimuthDeg = sun.AzimuthDeg,
            ExtraterrestrialNormalWPerM2 = sun.NormalWPerM2,
            GroundReflectance = ReflectanceOf(start, n, options),
            Ground = ground,
            Remarks = remarks,
        };
    }

    /// <summary>The beam of a winter where it would not be found again from global and diffuse; elsewhere NaN.</summary>
    public static double[] OwnBeam(Winter winter)
    {
        var own = new double[winter.Hours];
        for (var h = 0; h < own.Length; h++)
        {
            var (found, _) = BeamSplit.Close(
                winter.GlobalWPerM2[h], winter.DiffuseWPerM2[h], winter.SunZenithDeg[h], winter.ExtraterrestrialNormalWPerM2[h]);
            own[h] = Math.Abs(found - winter.BeamNormalWPerM2[h]) < SameWPerM2 ? double.NaN : winter.BeamNormalWPerM2[h];
        }

        return own;
    }

    /// <summary>Global over extraterrestrial irradiation, day by day from the start of the hours.</summary>
    public static double[] DailyClearness(Place place, DateTime start, double[] global)
    {
        var sun = new SunTrack(place, start.AddHours(-place.ZoneHours), start.AddHours(global.Length - place.ZoneHours));
        var clearness = new double[(global.Length + 23) / 24];
        for (var d = 0; d < clearness.Length; d++)
        {
            var above = sun.MeanHorizontal(start.AddDays(d).AddHours(-place.ZoneHours), 1440, 96) * 24;
            var light = global.Skip(24 * d).Take(24).ToArray();
            clearness[d] = above > 100 ? light.Sum() / above * 24 / light.Length : 0.4;
        }

        return clearness;
    }

    private static double[] SkyOf(Place place, DateTime start, HourWeather weather)
    {
        if (weather.SkyLongWaveWPerM2 is { } longWave)
            return [.. longWave.Select(SkyTemperature.FromLongWaveC)];
        var clearness = DailyClearness(place, start, weather.GlobalWPerM2);
        var solarShift = place.LongitudeDeg / 15 - place.ZoneHours + start.TimeOfDay.TotalHours;
        var pressure = Atmosphere.PressureHPa(place.ElevationM);
        var sky = new double[weather.Hours];
        for (var h = 0; h < sky.Length; h++)
        {
            var cover = weather.Cover?[h] ?? SkyTemperature.CoverAt(clearness, h + 0.5);
            sky[h] = SkyTemperature.UnderCloudC(weather.AirC[h], weather.DewPointC[h], cover, h + 0.5 + solarShift, pressure);
        }
        return sky;
    }

    // Snow lies for a share of the month: the light it throws up is spread over the month, as its single days are not known.
    private static double[] ReflectanceOf(DateTime start, int hours, WinterOptions options)
    {
        var reflectance = new double[hours];
        for (var h = 0; h < hours; h++)
        {
            var snow = options.SnowCoverByMonth is { } months ? months[start.AddHours(h).Month - 1] : 0;
            reflectance[h] = options.GroundReflectance + snow * (options.SnowReflectance - options.GroundReflectance);
        }

        return reflectance;
    }
}
