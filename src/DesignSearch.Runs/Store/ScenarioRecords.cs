using System.Globalization;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Runs.Store;

/// <summary>Puts a scenario into the words of the report.</summary>
internal static class ScenarioRecords
{
    private static readonly (WeatherField Field, string Words)[] Fields =
        [
            (WeatherField.Air, "air temperature"),
            (WeatherField.DewPoint, "dew point"),
            (WeatherField.Wind, "wind"),
            (WeatherField.Global, "sun on the level"),
            (WeatherField.Diffuse, "diffuse sun"),
            (WeatherField.SkyLongWave, "long-wave from the sky"),
        ];

    public static ScenarioRecord Of(Scenario scenario, WinterSet winters)
    {
        var (house, season) = (scenario.Greenhouse, scenario.Season);
        return new ScenarioRecord
        {
            Name = scenario.Name,
            Description = scenario.Description,
            Currency = scenario.Money.Currency,
            Separator = scenario.Separator,
            PlaceName = scenario.Place.Name,
            LatitudeDeg = scenario.Place.LatitudeDeg,
            LongitudeDeg = scenario.Place.LongitudeDeg,
            Season = $"{Day(season.StartMonth, season.StartDay)} to {Day(season.EndMonth, season.EndDay)}",
            FrostLimitC = house.FrostLimitC,
            Budget = scenario.Money.Budget,
            Years = scenario.Money.Years,
            Interest = scenario.Money.Interest,
            TariffPerKwh = scenario.Money.TariffPerKwh,
            House = HouseWords.Of(house),
            Winters = [.. winters.Winters.Select(w => Record(w.Winter, w.Weight, house.FrostLimitC))],
            WeatherSource = scenario.Climate.Sentence,
            InDoubt = [.. scenario.Doubts],
            // A field that the file lacks is reckoned from the others, so there is nothing to share out.
            WeatherShares = [.. Fields.Where(f => scenario.Climate.Record?.Origins.ContainsKey(f.Field) ?? true).Select(f => Share(scenario.Climate.Record, f.Field, f.Words))],
            Assumptions =
            [
                .. scenario.Systems.Assumptions.Select(e => new AssumptionRecord(
                    e.Key, scenario.Assumptions[e], e.Unit, !scenario.AssumptionsSet.Contains(e.Key),
                    e.Source)),
            ],
        };
    }

    private static WeatherShare Share(WeatherRecord? record, WeatherField field, string words)
    {
        if (record is null)
            return new(words, 0, 0, 0, 1);
        var shares = record.Shares(field);
        double Of(FieldOrigin origin) => shares.GetValueOrDefault(origin);
        return new(words, Of(FieldOrigin.Measured), Of(FieldOrigin.Modelled), Of(FieldOrigin.Filled), Of(FieldOrigin.Synthesised));
    }

    private static WinterRecord Record(Winter winter, double weight, double limitC)
    {
        var air = winter.AirC.AsSpan(winter.WarmUpHours).ToArray();
        var sun = winter.GlobalWPerM2.AsSpan(winter.WarmUpHours).ToArray();
        return new WinterRecord(
            winter.Name, winter.Kind.ToString().ToLowerInvariant(), weight, air.Average(), air.Min(),
            air.Count(c => c < limitC), sun.Average() * 24 / 1000, winter.Remarks)
        {
            Start = winter.Start,
        };
    }

    private static string Day(int month, int day) => new DateTime(2001, month, day).ToString("d MMMM", CultureInfo.InvariantCulture);
}
