using DesignSearch.Climate.Sun;
using DesignSearch.Physics;

namespace DesignSearch.Runs.Starting;

/// <summary>
/// Twelve means from a few answers, for a first look before tables are found: a yearly wave between the coldest and the warmest month, and sun as a share of
/// what falls above the air. The shares are our own choice, no better than the answers.
/// </summary>
/// <param name="LatitudeDeg">North positive [°], −66 to 66.</param>
/// <param name="ColdestC">Mean of the coldest month [°C].</param>
/// <param name="WarmestC">Mean of the warmest month [°C].</param>
/// <param name="Sky">What the sky is like.</param>
internal sealed record ClimateGuess(double LatitudeDeg, double ColdestC, double WarmestC, Sky Sky)
{
    private const int Months = 12;
    private const double LagMonths = 0.3;
    private const double DaysInMonth = 30.4;
    private const double MiddleDay = 15;

    // Shares in winter and in summer, depth of the nights under the mean [K], humidity [%].
    private static readonly Dictionary<Sky, (double Winter, double Summer, double DepthK, double HumidityPct)> Skies = new()
    {
        [Sky.Dull] = (0.28, 0.42, 2.8, 85),
        [Sky.Usual] = (0.36, 0.50, 4, 80),
        [Sky.Sunny] = (0.55, 0.62, 6, 60),
    };

    /// <summary>Mean air [°C], January first.</summary>
    public IEnumerable<double> MeanAirC => Each(w => Math.Round(WarmestC - w * (WarmestC - ColdestC), 1));

    /// <summary>Mean daily low [°C].</summary>
    public IEnumerable<double> MeanDailyLowC => MeanAirC.Select(c => Math.Round(c - Skies[Sky].DepthK, 1));

    /// <summary>Humidity [%].</summary>
    public IEnumerable<double> HumidityPct => Enumerable.Repeat(Skies[Sky].HumidityPct, Months);

    /// <summary>Sun on the level [kWh/m² a day].</summary>
    public IEnumerable<double> SunKwhPerM2Day
    {
        get
        {
            var (winter, summer, _, _) = Skies[Sky];
            var shares = Each(w => summer + w * (winter - summer));
            return shares.Select((share, m) =>
                Math.Round(Math.Clamp(share * DailySun.ExtraterrestrialJPerM2(LatitudeDeg, m * DaysInMonth + MiddleDay) / Energy.JoulesPerKwh, 0.05, 9), 2));
        }
    }

    /// <summary>A first guess of the coldest month from latitude and height (own choice).</summary>
    public static double UsualColdestC(double latitudeDeg, double elevationM) =>
        Math.Round(26 - 0.65 * Math.Max(0, Math.Abs(latitudeDeg) - 10) - CoolingKPerM * elevationM);

    /// <summary>A first guess of the warmest month from latitude and height (own choice).</summary>
    public static double UsualWarmestC(double latitudeDeg, double elevationM) =>
        Math.Round(28 - 0.28 * Math.Max(0, Math.Abs(latitudeDeg) - 20) - CoolingKPerM * elevationM);

    // Air cools by 6.5 K a kilometre (common practice, no source).
    private const double CoolingKPerM = 0.0065;

    // How wintry each month is, 1 in the middle of the coldest.
    private IEnumerable<double> Each(Func<double, double> of)
    {
        var coldest = (LatitudeDeg >= 0 ? 0 : Months / 2) + LagMonths;
        return Enumerable.Range(0, Months).Select(m => of((1 + Math.Cos(2 * Math.PI * (m - coldest) / Months)) / 2));
    }
}
