using System.Globalization;
using DesignSearch.Climate.Sun;
using DesignSearch.Files;
using DesignSearch.Physics;

namespace DesignSearch.Climate.Weather;

/// <summary>Makes the light of a grid whole: global and diffuse, no gaps, none by night.</summary>
internal sealed class LightColumns(SampleGrid grid, GapReport gaps, string path, FaultList faults, List<string> repairs, List<string> doubts)
{
    private const double SunWellUpCos = 0.25;
    private const int EnoughHours = 300;
    private const double DullestClearSky = 0.65;
    private const double ClearestSky = 1.3;
    private const double DullForAClearSky = 0.82;
    private const double BrightForAClearSky = 1.13;

    /// <summary>Fills global and diffuse in place.</summary>
    /// <param name="above">Irradiance above the atmosphere over the same intervals.</param>
    /// <returns>False when the file has no light at all.</returns>
    public bool Prepare(double[] above)
    {
        if (!grid.Values.TryGetValue(WeatherField.Global, out var global))
            return false;
        CheckLevel(global, above);
        Clean(global, above);
        gaps.FillGlobal(global, above);
        Diffuse(global, above);
        return true;
    }

    /// <summary>Adds the parts of the light when a file gives only them.</summary>
    public static void AddGlobal(Dictionary<WeatherField, double[]> values)
    {
        if (!values.ContainsKey(WeatherField.Global) && values.TryGetValue(WeatherField.BeamLevel, out var beam) && values.TryGetValue(WeatherField.Diffuse, out var diffuse))
            values[WeatherField.Global] = [.. beam.Zip(diffuse, (b, d) => b + d)];
    }

    private void Clean(double[] global, double[] above)
    {
        var dark = DarkGaps.Mark(global, above);
        var (night, bright) = (0, 0);
        for (var i = 0; i < global.Length; i++)
        {
            if (above[i] <= 0 && global[i] != 0)
                (global[i], night) = (0, night + (global[i] > 5 ? 1 : 0));
            else if (global[i] > 1.2 * above[i] + 50)
                (global[i], bright) = (double.NaN, bright + 1);
            else if (global[i] < 0)
                global[i] = 0;
        }

        if (dark > 0)
            repairs.Add(FormattableString.Invariant($"{dark} rows have no light at all with the sun well up: gaps written as zero, filled from the days around them."));
        if (night > 0)
            repairs.Add(FormattableString.Invariant($"{night} rows have light while the sun is down; it was left out."));
        if (bright > 0)
            repairs.Add(FormattableString.Invariant($"{bright} rows have more light than there is above the atmosphere; they were taken as gaps."));
    }

    // In two months some hours are clear; a wrong unit or a shaded sensor keeps away from the light of a clear sky.
    private void CheckLevel(double[] global, double[] above)
    {
        var share = Enumerable.Range(0, global.Length)
            .Where(i => above[i] > SunWellUpCos * Radiation.SolarConstantWPerM2 && !double.IsNaN(global[i]))
            .Select(i => global[i] / ClearSky.HaurwitzWPerM2(above[i] / Radiation.SolarConstantWPerM2)).Order().ToArray();
        if (share.Length * grid.StepHours < EnoughHours)
            return;
        var clearest = share[(int)(0.98 * share.Length)];
        if (clearest is >= DullestClearSky and < DullForAClearSky or > BrightForAClearSky and <= ClearestSky)
            doubts.Add(FormattableString.Invariant(
                $"The clearest hours of the file bring {100 * clearest:0} % of the light of a clear sky: a sensor that is shaded, dirty or off its calibration, or a tilted one?"));
        if (clearest is < DullestClearSky or > ClearestSky)
            faults.Add(
                path, 0, 0, "",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"global irradiance in W/m²: its clearest hours bring {100 * clearest:0} % of the light of a clear sky (another "
                        + $"unit, a tilted or shaded sensor, or another column?)"));
    }

    private void Diffuse(double[] global, double[] above)
    {
        var diffuse = grid.Values.GetValueOrDefault(WeatherField.Diffuse) ?? [.. global.Select(_ => double.NaN)];
        var level = grid.Values.GetValueOrDefault(WeatherField.BeamLevel);
        var filled = gaps.Filled[WeatherField.Global];
        var split = 0;
        for (var i = 0; i < diffuse.Length; i++)
        {
            if (!filled[i] && double.IsNaN(diffuse[i]) && level is not null && !double.IsNaN(level[i]))
                diffuse[i] = global[i] - level[i];
            if (filled[i] || double.IsNaN(diffuse[i]))
            {
                split += filled[i] || global[i] <= 0 ? 0 : 1;
                diffuse[i] = global[i] * BeamSplit.WinterHourly(above[i] > 0 ? global[i] / above[i] : 0);
            }

            diffuse[i] = Math.Clamp(diffuse[i], 0, global[i]);
        }

        if (split > 0)
            repairs.Add(FormattableString.Invariant($"{split} rows with light but without its diffuse part were split by the usual curve of Erbs (1982)."));
        grid.Values[WeatherField.Diffuse] = diffuse;
    }
}
