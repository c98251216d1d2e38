using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Says where the figures of made days come from.</summary>
internal static class UsualDaysWords
{
    /// <summary>One sentence for each figure.</summary>
    public static string Origin(MonthlyClimate climate, Station? own, KnownLowest? known)
    {
        var table = own is null ? "from stations of like climate" : $"from the station {own.Place.Name}, whose place and means are these";
        var builder = climate.Months.All(m => m.DailyMeanSdK is not null || m.DailyLowSdK is not null);
        var spread = builder ? "from the builder's own figures" : own?.Spread is null ? "from stations of like climate" : table;
        var lowest = known is null
            ? table
            : FormattableString.Invariant($"from the lowest the builder knows, {known.LowestC:0.#} °C in {known.Years:0.#} years");
        return $"How far single days stray from the mean of their month is taken {spread}; "
            + $"the coldest night of a usual year is taken {lowest}. Stations: {StationTable.Credit}.";
    }
}
