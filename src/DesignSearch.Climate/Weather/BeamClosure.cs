using System.Globalization;
using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Weather;

/// <summary>Says whether the beam column of a file closes with global and diffuse; it is rebuilt from them in any case.</summary>
internal static class BeamClosure
{
    private const double LowestSine = 0.19;
    private const double LargestRms = 20;

    public static void Say(SampleGrid grid, SunTrack sun, Place place, SunFit fit, List<string> repairs)
    {
        if (!grid.Values.TryGetValue(WeatherField.BeamNormal, out var beam))
            return;
        var (global, diffuse) = (grid.Values[WeatherField.Global], grid.Values[WeatherField.Diffuse]);
        var (sum, squares, count) = (0.0, 0.0, 0);
        for (var i = 0; i < beam.Length; i++)
        {
            var sine = sun.CosZenith(grid.Stamp(i).AddMinutes(fit.UsedMin).AddHours(-place.ZoneHours));
            if (sine < LowestSine || global[i] < 50 || double.IsNaN(beam[i]))
                continue;
            var miss = global[i] - diffuse[i] - beam[i] * sine;
            (sum, squares, count) = (sum + miss, squares + miss * miss, count + 1);
        }

        if (count > 100 && Math.Sqrt(squares / count) > LargestRms)
            repairs.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The beam column does not close with global and diffuse (rms {Math.Sqrt(squares / count):0} W/m²); the beam was "
                    + $"rebuilt from them with the mid-hour sun and capped."));
    }
}
