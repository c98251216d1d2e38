using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Asks humidity and wind whether they can be believed.</summary>
internal static class OtherDoubts
{
    private const double AboveAirK = 1;
    private const double MostAbove = 0.05;
    private const double SurelyExchanged = 0.5;
    private const double DeadMPerS = 0.3;
    private const int Enough = 500;

    public static void Say(string path, SampleGrid grid, FaultList faults, List<string> doubts)
    {
        if (grid.Values.TryGetValue(WeatherField.DewPoint, out var dew))
        {
            var above = grid.Values[WeatherField.Air].Zip(dew).Count(p => p.Second > p.First + AboveAirK) / (double)dew.Length;
            if (above > SurelyExchanged)
                faults.Add(path, 0, 0, "", FormattableString.Invariant($"a dew point under the air; in {100 * above:0} % of the rows it is above: the two columns are exchanged"));
            else if (above > MostAbove)
                doubts.Add(FormattableString.Invariant(
                    $"In {100 * above:0} % of the rows the dew point is above the air, which cannot be: are the two columns exchanged?"));
        }

        if (grid.Values.TryGetValue(WeatherField.Wind, out var wind) && wind.Where(w => !double.IsNaN(w)).ToArray() is { Length: > Enough } known && known.Average() < DeadMPerS)
            doubts.Add(FormattableString.Invariant(
                $"The wind averages {known.Average():0.0} m/s: an anemometer that stands still, or behind a wall? The house loses more heat in the open."));
    }
}
