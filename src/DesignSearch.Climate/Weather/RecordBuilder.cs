using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Turns the samples of a grid into a record: gaps, hour means, the split of the light, the summary.</summary>
internal sealed class RecordBuilder(
    string path,
    FormatMap map,
    Place place,
    SampleGrid grid,
    SunTrack sun,
    SunFit fit,
    bool radiationIsMean,
    FaultList faults,
    List<string> repairs)
{
    private readonly HourMeans hours = new(grid, fit.UsedMin);
    private readonly GapReport gaps = new(grid, path, faults, repairs);
    private readonly Dictionary<WeatherField, FieldOrigin[]> origins = [];

    public required string Period { get; init; }

    public required StampMeaning Weather { get; init; }

    public required ReadingOptions Options { get; init; }

    public required List<string> Doubts { get; init; }

    private double WeatherCentreMin => Weather switch { StampMeaning.Ending => -grid.StepMin / 2.0, StampMeaning.Starting => grid.StepMin / 2.0, _ => 0 };

    public WeatherRecord Build()
    {
        var recordedAir = (double[])grid.Values[WeatherField.Air].Clone();
        AddDewPoint();
        AddWind();
        gaps.FillWeather(WeatherField.Air, "air temperature");
        gaps.FillWeather(WeatherField.DewPoint, "dew point");
        gaps.FillWeather(WeatherField.Wind, "wind");
        gaps.FillWeather(WeatherField.SkyLongWave, "sky radiation");
        var light = new LightColumns(grid, gaps, path, faults, repairs, Doubts);
        var above = Above();
        var hasLight = light.Prepare(above);
        faults.ThrowIfAny();

        var air = Level(WeatherField.Air);
        var made = new MissingFields(place, hours.Start, air, Options, map.Provider, repairs) { Cloud = Cloud() };
        var global = hasLight ? Light(WeatherField.Global, above) : made.Global();
        var diffuse = hasLight ? Light(WeatherField.Diffuse, above) : made.Diffuse(global);
        var dew = grid.Values.ContainsKey(WeatherField.DewPoint) ? [.. Level(WeatherField.DewPoint).Select((d, h) => Math.Min(d, air[h]))] : made.DewPoint();
        var wind = grid.Values.ContainsKey(WeatherField.Wind) ? Level(WeatherField.Wind) : made.Wind();
        var beam = new double[hours.Hours];
        var seen = new SunHours(place, hours.Start, hours.Hours);
        var own = hasLight && BeamClosure.Holds(grid, sun, place, fit, repairs) ? OwnBeam() : null;
        for (var h = 0; h < beam.Length; h++)
            (beam[h], diffuse[h]) = own is not null && BeamClosure.HoldsIn(global[h], diffuse[h], own[h], seen.ZenithDeg[h])
                ? BeamSplit.Around(global[h], own[h], seen.ZenithDeg[h])
                : BeamSplit.Close(global[h], diffuse[h], seen.ZenithDeg[h], seen.NormalWPerM2[h]);
        var sky = grid.Values.ContainsKey(WeatherField.SkyLongWave) ? Level(WeatherField.SkyLongWave) : made.SkyLongWave(dew, global);
        return new()
        {
            Place = place,
            Source = Path.GetFileName(path),
            Period = Period,
            IsTypicalYear = grid.Wraps,
            Start = hours.Start,
            AirC = air,
            DewPointC = dew,
            WindMPerS = wind,
            GlobalWPerM2 = global,
            DiffuseWPerM2 = diffuse,
            BeamNormalWPerM2 = beam,
            SkyLongWaveWPerM2 = sky,
            Unknown = Unknown(),
            Origins = Origins(sky is not null),
            SunFit = fit,
            Repairs = repairs,
            Doubts = Doubts,
            Summary = SummaryMaker.Make(grid, recordedAir, fit.UsedMin, new(hours.Start, global, wind)),
        };
    }

    private double[] Level(WeatherField field) => hours.OfLevel(grid.Values[field], WeatherCentreMin, Weather != StampMeaning.Instant);

    // The beam of the samples, where their light was not filled.
    private double[] OwnBeam()
    {
        var filled = gaps.Filled[WeatherField.Global];
        var beam = grid.Values[WeatherField.BeamNormal].Select((b, i) => filled[i] ? double.NaN : b).ToArray();
        return hours.OfLevel(beam, fit.UsedMin, radiationIsMean);
    }

    // Cloud of the hours [0…1], NaN where none was seen for long.
    private double[]? Cloud() => grid.Values.TryGetValue(WeatherField.Cloud, out var cloud)
        ? [.. hours.OfLevel(CloudGaps.Bridge(grid, cloud), WeatherCentreMin, Weather != StampMeaning.Instant).Select(c => c / 100)]
        : null;

    private IReadOnlyList<HourSpan> Unknown()
    {
        if (gaps.Unknown.Count == 0)
            return [];
        var slots = new bool[grid.Count];
        foreach (var (first, count) in gaps.Unknown)
            Array.Fill(slots, true, first, count);
        return HourSpans.Of(hours.Any(slots, WeatherCentreMin));
    }

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

    private void AddDewPoint()
    {
        if (!grid.Values.ContainsKey(WeatherField.DewPoint) && grid.Values.TryGetValue(WeatherField.Humidity, out var humidity))
            grid.Values[WeatherField.DewPoint] = [.. grid.Values[WeatherField.Air].Zip(humidity, (air, h) => double.IsNaN(h) ? double.NaN : Humidity.DewPointC(air, h))];
    }

    // Wind over short grass by the logarithmic law of FAO-56, equation 47.
    private void AddWind()
    {
        if (grid.Values.ContainsKey(WeatherField.Wind) || !grid.Values.TryGetValue(WeatherField.WindAt2M, out var low))
            return;
        var factor = Math.Log(67.8 * 10 - 5.42) / 4.87;
        grid.Values[WeatherField.Wind] = [.. low.Select(w => w * factor)];
        repairs.Add(FormattableString.Invariant($"The file has the wind at 2 m only: {factor:0.00} times that was taken for 10 m."));
    }

    private Dictionary<WeatherField, FieldOrigin[]> Origins(bool hasSky)
    {
        Origin(WeatherField.Air, WeatherField.Air, map.IsDaily ? FieldOrigin.Synthesised : map.WeatherOrigin, WeatherCentreMin);
        Origin(WeatherField.DewPoint, WeatherField.DewPoint, map.WeatherOrigin, WeatherCentreMin);
        Origin(WeatherField.Wind, WeatherField.Wind, map.WeatherOrigin, WeatherCentreMin);
        Origin(WeatherField.Global, WeatherField.Global, map.RadiationOrigin, fit.UsedMin);
        Origin(WeatherField.Diffuse, WeatherField.Global, map.Fields.Any(f => f.Field == WeatherField.Diffuse) ? map.RadiationOrigin : FieldOrigin.Synthesised, fit.UsedMin);
        if (hasSky)
            Origin(WeatherField.SkyLongWave, WeatherField.SkyLongWave, map.WeatherOrigin, WeatherCentreMin);
        return origins;
    }

    private void Origin(WeatherField field, WeatherField like, FieldOrigin own, double centreMin)
    {
        var source = grid.Values.ContainsKey(like) ? own : FieldOrigin.Synthesised;
        var filled = gaps.Filled.GetValueOrDefault(like) ?? new bool[grid.Count];
        origins[field] = [.. hours.Any(filled, centreMin).Select(f => f ? FieldOrigin.Filled : source)];
    }
}
