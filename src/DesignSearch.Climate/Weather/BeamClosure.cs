using System.Globalization;
using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Weather;

/// <summary>Asks whether the beam column of a file closes with global and diffuse; where it does it is used as it stands.</summary>
internal static class BeamClosure
{
    private const double LowestSine = 0.19;
    private const double LargestRms = 20;
    private const double LargestShare = 0.1;

    // Lower down the sun moves through too much of the hour for the sun at mid-hour to tell.
    private const double LowSunDeg = 80;

    /// <summary>True when the file's own beam can be used; says so, or why not.</summary>
    public static bool Holds(SampleGrid grid, SunTrack sun, Place place, SunFit fit, List<string> repairs)
    {
        if (!grid.Values.TryGetValue(WeatherField.BeamNormal, out var beam))
            return false;
        var (global, diffuse) = (grid.Values[WeatherField.Global], grid.Values[WeatherField.Diffuse]);
        var (squares, count) = (0.0, 0);
        for (var i = 0; i < beam.Length; i++)
        {
            var sine = sun.CosZenith(grid.Stamp(i).AddMinutes(fit.UsedMin).AddHours(-place.ZoneHours));
            if (sine < LowestSine || global[i] < 50 || double.IsNaN(beam[i]))
                continue;
            var miss = global[i] - diffuse[i] - beam[i] * sine;
            (squares, count) = (squares + miss * miss, count + 1);
        }

        if (count <= 100)
            return false;
        var rms = Math.Sqrt(squares / count);
        if (rms <= LargestRms)
            return true;
        repairs.Add(string.Create(
            CultureInfo.InvariantCulture,
            $"The beam column does not close with global and diffuse (rms {rms:0} W/m²); the beam was "
                + $"rebuilt from them with the mid-hour sun and capped."));
        return false;
    }

    /// <summary>True for an hour whose beam agrees with its global and diffuse light.</summary>
    /// <param name="global">[W/m²].</param>
    /// <param name="diffuse">[W/m²].</param>
    /// <param name="beam">Normal to the sun [W/m²]; NaN where it is not known.</param>
    /// <param name="zenithDeg">Sun at mid-hour [°].</param>
    public static bool HoldsIn(double global, double diffuse, double beam, double zenithDeg)
    {
        if (double.IsNaN(beam) || beam < 0)
            return false;
        var level = beam * Math.Max(0, Math.Cos(zenithDeg * Math.PI / 180));
        return level <= global && (zenithDeg > LowSunDeg || Math.Abs(global - diffuse - level) <= Math.Max(LargestRms, LargestShare * global));
    }
}
