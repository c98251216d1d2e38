using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>What the days of a place do around the means of their months, each from the best that is known.</summary>
/// <param name="Spread">Spreads by month, memory, and the tie of clear and cold.</param>
/// <param name="LowestC">Lowest hour mean of a usual year [°C].</param>
/// <param name="Origin">Where the figures come from, for the report.</param>
/// <param name="ClearnessIsKnown">False so far from every station that the curve of Hollands and Huget is the better word on the spread of clearness.</param>
internal sealed record UsualDays(StationSpread Spread, double LowestC, string Origin, bool ClearnessIsKnown)
{
    private const double SamePlaceKm = 12;
    private const double TableReachKm = 2000;
    private const double SameHeightM = 100;
    private const double SameMeansK = 0.5;

    /// <summary>The figures of a climate.</summary>
    /// <param name="climate">Place and means, and spreads where the builder knows them.</param>
    /// <param name="options">The lowest temperature that is known, where there is one.</param>
    public static UsualDays Of(MonthlyClimate climate, WinterOptions options)
    {
        var own = OwnStation(climate);
        var (like, depth) = own?.Spread is null || climate.Months.Any(m => m.DailyMeanSdK is null && m.DailyLowSdK is null)
            ? LikeClimates.Table.At(climate.Place, climate.Months)
            : (own.Spread, 0);
        var spread = own?.Spread ?? like;
        var lowest = options.Known is { } known
            ? ReturnLevels.MeanOfYearly(known.LowestC, known.Years, options.YearlyLowestSdK)
            : own?.LowestC ?? climate.Months.Min(m => m.LowestHourC) - depth * Wider(climate, spread);
        return new(
            Given(climate, spread), lowest, UsualDaysWords.Origin(climate, own, options.Known),
            Nearest(climate).DistanceKm(climate.Place.LatitudeDeg, climate.Place.LongitudeDeg) <= TableReachKm);
    }

    // Where the builder's days stray less than those of like climates, so does the coldest night.
    private static double Wider(MonthlyClimate climate, StationSpread spread)
    {
        var coldest = Enumerable.Range(0, climate.Months.Count).MinBy(m => climate.Months[m].LowestHourC);
        return Given(climate, spread).LowSdK[coldest] / spread.LowSdK[coldest];
    }

    // A builder's figure beats the table's; where only one of mean and low is given, the other keeps its ratio to it.
    private static StationSpread Given(MonthlyClimate climate, StationSpread spread)
    {
        double[] mean = [.. climate.Months.Select((m, i) => m.DailyMeanSdK ?? spread.MeanSdK[i] * (m.DailyLowSdK is { } low ? low / spread.LowSdK[i] : 1))];
        double[] lows = [.. climate.Months.Select((m, i) => m.DailyLowSdK ?? spread.LowSdK[i] * (m.DailyMeanSdK is { } middle ? middle / spread.MeanSdK[i] : 1))];
        return spread with { MeanSdK = mean, LowSdK = lows, ClearLowTie = climate.Character is { } character ? TieOf(character) : spread.ClearLowTie };
    }

    // Pooled winters of nine open station files.
    private static double TieOf(ClimateCharacter character) => character switch
    {
        ClimateCharacter.MaritimeOrValley => -0.46,
        ClimateCharacter.DryInland => -0.26,
        _ => -0.20,
    };

    // A station counts as the place itself where it stands there and has its means.
    private static Station? OwnStation(MonthlyClimate climate)
    {
        var place = climate.Place;
        var nearest = Nearest(climate);
        return nearest.DistanceKm(place.LatitudeDeg, place.LongitudeDeg) <= SamePlaceKm && Math.Abs(nearest.Place.ElevationM - place.ElevationM) <= SameHeightM
            && nearest.Months.Zip(climate.Months, (a, b) => Math.Abs(a.MeanC - b.MeanC)).Average() <= SameMeansK
            ? nearest
            : null;
    }

    private static Station Nearest(MonthlyClimate climate) => StationTable.Nearest(climate.Place.LatitudeDeg, climate.Place.LongitudeDeg, 1)[0];
}
