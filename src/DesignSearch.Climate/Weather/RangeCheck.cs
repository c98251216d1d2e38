using System.Globalization;
using DesignSearch.Files;
using DesignSearch.Physics;

namespace DesignSearch.Climate.Weather;

/// <summary>Looks for values that cannot be: single ones become gaps, many of them are a wrong unit.</summary>
internal sealed class RangeCheck(string path, SampleGrid grid, FaultList faults, List<string> repairs)
{
    private const double GalePlaceMPerS = 9;

    public void Clean()
    {
        Kelvin();
        Fraction();
        Bound(WeatherField.Air, "air temperature", -60, 55, "°C", "°F");
        Bound(WeatherField.DewPoint, "dew point", -80, 40, "°C", "°F");
        Bound(WeatherField.Humidity, "humidity", 0, 105, "%", "another unit");
        Bound(WeatherField.Cloud, "cloud", 0, 100.01, "%", "oktas or tenths");
        Bound(WeatherField.Wind, "wind", 0, 60, "m/s", "km/h");
        Bound(WeatherField.Global, "global irradiance", -20, 1700, "W/m²", "kJ/m²");
        Bound(WeatherField.Diffuse, "diffuse irradiance", -20, 1200, "W/m²", "kJ/m²");
        Bound(WeatherField.SkyLongWave, "sky radiation", 50, 700, "W/m²", "another unit");
        if (Known(WeatherField.Air) is { Length: > 6000 } air && air.Average() > 32)
            Refuse("air temperature", FormattableString.Invariant($"its mean is {air.Average():0.0}"), "°C", "°F");
        if (Known(WeatherField.Wind) is { Length: > 500 } wind && wind.Average() > GalePlaceMPerS)
            Refuse("wind", FormattableString.Invariant($"its mean is {wind.Average():0.0}"), "m/s", "km/h");
        if (Known(WeatherField.Wind) is { Length: > 500 } windy && windy.Average() is > 6 and <= GalePlaceMPerS)
            repairs.Add(FormattableString.Invariant($"The wind averages {windy.Average():0.0} m/s, which is a gale-swept place: look whether the file gives it in km/h."));
        if (Known(WeatherField.Global) is { Length: > 500 } light && light.Max() is > 0 and < 30)
            Refuse("global irradiance", FormattableString.Invariant($"its highest is {light.Max():0.00}"), "W/m²", "kW/m² or MJ/m²");
    }

    private double[]? Known(WeatherField field) => grid.Values.TryGetValue(field, out var values) ? [.. values.Where(v => !double.IsNaN(v))] : null;

    private void Kelvin()
    {
        foreach (var field in (ReadOnlySpan<WeatherField>)[WeatherField.Air, WeatherField.DewPoint])
        {
            if (Known(field) is not { Length: > 0 } known || known.Min() < 150)
                continue;
            var values = grid.Values[field];
            for (var i = 0; i < values.Length; i++)
                values[i] -= Temperature.ZeroCelsiusK;
            repairs.Add((field == WeatherField.Air ? "The air temperature" : "The dew point") + " was taken as kelvin, since every value is above 150.");
        }
    }

    private void Fraction()
    {
        if (Known(WeatherField.Humidity) is not { Length: > 100 } known || known.Max() > 1.05)
            return;
        var values = grid.Values[WeatherField.Humidity];
        for (var i = 0; i < values.Length; i++)
            values[i] *= 100;
        repairs.Add("The humidity was taken as a fraction of 1, since no value is above 1.");
    }

    private void Bound(WeatherField field, string name, double low, double high, string unit, string likely)
    {
        if (!grid.Values.TryGetValue(field, out var values))
            return;
        var wrong = Enumerable.Range(0, values.Length).Where(i => values[i] < low || values[i] > high).ToArray();
        if (wrong.Length == 0)
            return;
        // Cloud only helps the rest: no reason to refuse a file.
        if (wrong.Length > Math.Max(10, values.Length / 200) && field != WeatherField.Cloud)
        {
            Refuse(
                name,
                FormattableString.Invariant(
                    $"{wrong.Length} values are outside {low} to {high}, the first {values[wrong[0]]:0.#} in line {grid.Lines[wrong[0]]}"),
                unit, likely);
            return;
        }

        repairs.Add(string.Create(
            CultureInfo.InvariantCulture,
            $"{wrong.Length} {(wrong.Length == 1 ? "value" : "values")} of the {name} cannot be, "
                + $"the first {values[wrong[0]]:0.#} in line {grid.Lines[wrong[0]]}; "
                + $"{(wrong.Length == 1 ? "it was taken as a gap" : "they were taken as gaps")}."));
        foreach (var i in wrong)
            values[i] = double.NaN;
    }

    private void Refuse(string name, string why, string unit, string likely) => faults.Add(path, 0, 0, "", $"{name} in {unit}: {why} (is it {likely}?)");
}
