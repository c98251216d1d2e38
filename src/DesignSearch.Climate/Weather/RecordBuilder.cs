using DesignSearch.Files;

namespace DesignSearch.Climate;

/// <summary>Turns the samples of a grid into a record: gaps, hour means, the split of the light, the summary.</summary>
internal sealed class RecordBuilder(string path, FormatMap map, Place place, SampleGrid grid, SunTrack sun, SunFit fit, bool radiationIsMean, FaultList faults, List<string> repairs)
{
    private readonly HourMeans hours = new(grid, fit.UsedMin);
    private readonly GapReport gaps = new(grid, path, faults, repairs);

    public required string Period { get; init; }

    public WeatherRecord Build()
    {
        var above = Above();
        var recordedAir = (double[])grid.Values[WeatherField.Air].Clone();
        CheckRadiation(above);
        AddDewPoint();
        gaps.FillWeather(WeatherField.Air, "air temperature");
        gaps.FillWeather(WeatherField.DewPoint, "dew point");
        gaps.FillWeather(WeatherField.Wind, "wind");
        gaps.FillWeather(WeatherField.SkyLongWave, "sky radiation");
        gaps.FillGlobal(grid.Values[WeatherField.Global], above);
        faults.ThrowIfAny();

        FillDiffuse(above);
        var air = Level(WeatherField.Air);
        var dew = Level(WeatherField.DewPoint).Select((d, h) => Math.Min(d, air[h])).ToArray();
        var global = Light(WeatherField.Global, above);
        var diffuse = Light(WeatherField.Diffuse, above);
        var beam = new double[hours.Hours];
        var seen = new SunHours(place, hours.Start, hours.Hours);
        for (var h = 0; h < beam.Length; h++)
            (beam[h], diffuse[h]) = BeamSplit.Close(global[h], diffuse[h], seen.ZenithDeg[h], seen.NormalWPerM2[h]);
        return new()
        {
            Place = place,
            Source = Path.GetFileName(path),
            Provider = map.Provider,
            Period = Period,
            IsTypicalYear = map.TypicalYear,
            Start = hours.Start,
            AirC = air,
            DewPointC = dew,
            WindMPerS = Level(WeatherField.Wind),
            GlobalWPerM2 = global,
            DiffuseWPerM2 = diffuse,
            BeamNormalWPerM2 = beam,
            SkyLongWaveWPerM2 = grid.Values.ContainsKey(WeatherField.SkyLongWave) ? Level(WeatherField.SkyLongWave) : null,
            Origins = Origins(),
            SunFit = fit,
            Repairs = repairs,
            Summary = SummaryMaker.Make(grid, recordedAir, fit.UsedMin),
        };
    }

    private double WeatherCentreMin => map.Weather switch
    {
        StampMeaning.Ending => -grid.StepMin / 2.0,
        StampMeaning.Starting => grid.StepMin / 2.0,
        _ => 0,
    };

    private double[] Level(WeatherField field) => hours.OfLevel(grid.Values[field], WeatherCentreMin, map.Weather != StampMeaning.Instant);

    private double[] Light(WeatherField field, double[] above) => hours.OfIrradiance(grid.Values[field], above, fit.UsedMin, radiationIsMean, sun, place.ZoneHours);

    // Irradiance above the atmosphere over the interval, or at the instant, of every sample.
    private double[] Above()
    {
        var above = new double[grid.Count];
        for (var i = 0; i < above.Length; i++)
        {
            var middle = grid.Stamp(i).AddMinutes(fit.UsedMin).AddHours(-place.ZoneHours);
            above[i] = radiationIsMean ? sun.MeanHorizontal(middle.AddMinutes(-grid.StepMin / 2.0), grid.StepMin) : sun.Horizontal(middle);
        }

        return above;
    }

    private void CheckRadiation(double[] above)
    {
        var global = grid.Values[WeatherField.Global];
        var dark = DarkGaps.Mark(global, above);
        var night = 0;
        for (var i = 0; i < global.Length; i++)
        {
            if (above[i] > 0 || global[i] == 0)
                continue;
            night += global[i] > 5 ? 1 : 0;
            global[i] = 0;
        }

        if (dark > 0)
            repairs.Add(FormattableString.Invariant($"{dark} rows have no light at all with the sun well up: gaps written as zero, filled from the days around them."));
        if (night > 0)
            repairs.Add(FormattableString.Invariant($"{night} rows have light while the sun is down; it was left out."));
    }

    private void AddDewPoint()
    {
        if (!grid.Values.ContainsKey(WeatherField.DewPoint) && grid.Values.TryGetValue(WeatherField.Humidity, out var humidity))
            grid.Values[WeatherField.DewPoint] = [.. grid.Values[WeatherField.Air].Zip(humidity, (air, h) => double.IsNaN(h) ? double.NaN : Humidity.DewPointC(air, h))];
    }

    private void FillDiffuse(double[] above)
    {
        var global = grid.Values[WeatherField.Global];
        var diffuse = grid.Values.GetValueOrDefault(WeatherField.Diffuse) ?? Enumerable.Repeat(double.NaN, grid.Count).ToArray();
        var filled = gaps.Filled[WeatherField.Global];
        for (var i = 0; i < diffuse.Length; i++)
        {
            if (filled[i] || double.IsNaN(diffuse[i]))
                diffuse[i] = global[i] * BeamSplit.ErbsHourly(above[i] > 0 ? global[i] / above[i] : 0);
            diffuse[i] = Math.Clamp(diffuse[i], 0, global[i]);
        }

        grid.Values[WeatherField.Diffuse] = diffuse;
    }

    private Dictionary<WeatherField, FieldOrigin[]> Origins()
    {
        var origins = new Dictionary<WeatherField, FieldOrigin[]>();
        foreach (var field in (ReadOnlySpan<WeatherField>)[WeatherField.Air, WeatherField.DewPoint, WeatherField.Wind, WeatherField.Global, WeatherField.Diffuse])
        {
            var light = field is WeatherField.Global or WeatherField.Diffuse;
            var filled = gaps.Filled.GetValueOrDefault(light ? WeatherField.Global : field) ?? new bool[grid.Count];
            var own = light ? map.RadiationOrigin : map.WeatherOrigin;
            origins[field] = [.. hours.Any(filled, light ? fit.UsedMin : WeatherCentreMin).Select(f => f ? FieldOrigin.Filled : own)];
        }

        return origins;
    }
}
