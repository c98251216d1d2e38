using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;
using DesignSearch.Physics;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Asks whether twelve monthly means can be true where the scenario says that the house stands. A weather file is asked when it is read.</summary>
internal static class PlaceDoubts
{
    // A weather file that averages more is refused; people live and plant hardly anywhere above it.
    private const double MostWindMPerS = 9;

    // Shares of the light above the air that reach the ground in a month: the clearest and the darkest of the stations' own means lie within (own choice).
    private const double Clearest = 0.85;
    private const double Darkest = 0.08;
    private const double LeastAboveKwh = 0.5;

    // No month within the tropics is so cold at sea level; air cools by 6.5 K a kilometre (common practice, no source).
    private const double TropicDeg = 25;
    private const double ColdInTropicsC = 8;
    private const double CoolingKPerM = 0.0065;

    private const double TurnedK = 3;
    private const double MostNorthDeg = 66;
    private const int Middle = 15;
    private const double DaysInMonth = 30.4;
    private static readonly int[] NorthernWinter = [12, 1, 2];
    private static readonly int[] NorthernSummer = [6, 7, 8];

    /// <summary>What is in doubt, a sentence each.</summary>
    public static IEnumerable<string> Of(Scenario scenario)
    {
        if (scenario.Climate.Monthly is not { } means)
            yield break;
        var (latitude, longitude, elevation) = (scenario.Place.LatitudeDeg, scenario.Place.LongitudeDeg, scenario.Place.ElevationM);
        var wind = means.Months.Average(m => m.WindMPerS);
        if (wind > MostWindMPerS)
            yield return PlaceDoubtWords.Windy(wind);
        if (IsTurned(scenario))
        {
            yield return PlaceDoubtWords.Turned(latitude);
            yield break;
        }

        var wrong = Wrong(means, latitude, elevation);
        if (wrong is null)
            yield break;
        var mayBeSwapped = Math.Abs(longitude) <= MostNorthDeg && Wrong(means, longitude, elevation) is null;
        yield return wrong + (mayBeSwapped ? PlaceDoubtWords.Swapped(latitude, longitude) : "");
    }

    /// <summary>True where the means have their summer when the place has its winter.</summary>
    public static bool IsTurned(Scenario scenario)
    {
        if (scenario.Climate.Monthly is not { } means || Math.Abs(scenario.Place.LatitudeDeg) < TropicDeg)
            return false;
        double Mean(int[] months) => months.Average(m => means.Months[m - 1].MeanC);
        return Math.Sign(scenario.Place.LatitudeDeg) * (Mean(NorthernWinter) - Mean(NorthernSummer)) > TurnedK;
    }

    private static string? Wrong(MonthlyClimate means, double latitudeDeg, double elevationM)
    {
        for (var month = 1; month <= means.Months.Count; month++)
        {
            var above = DailySun.ExtraterrestrialJPerM2(latitudeDeg, (month - 1) * DaysInMonth + Middle) / Energy.JoulesPerKwh;
            var sun = means.Months[month - 1].GhiKwhPerM2Day;
            if (sun > Clearest * above)
                return PlaceDoubtWords.TooBright(month, sun, above, latitudeDeg);
            if (above > LeastAboveKwh && sun < Darkest * above)
                return PlaceDoubtWords.TooDark(month, sun, above, latitudeDeg);
        }

        var coldest = means.Months.MinBy(m => m.MeanC)!;
        return Math.Abs(latitudeDeg) < TropicDeg && coldest.MeanC + CoolingKPerM * elevationM < ColdInTropicsC
            ? PlaceDoubtWords.TooCold(coldest.MeanC, latitudeDeg, elevationM)
            : null;
    }
}
