namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Another price of electricity in some hours, every day alike.</summary>
/// <param name="PerKwh">Price of a kilowatt-hour in these hours.</param>
/// <param name="FromHour">First of these hours, 0 to 23, local standard time.</param>
/// <param name="ToHour">Hour at which the day's price comes back, 0 to 23; below the first where the hours cross midnight.</param>
public sealed record NightTariff(decimal PerKwh, int FromHour, int ToHour)
{
    /// <summary>Whether an hour of the day has this price.</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    public bool Holds(int hour) => FromHour < ToHour ? hour >= FromHour && hour < ToHour : hour >= FromHour || hour < ToHour;

    /// <summary>How many hours a day have this price.</summary>
    public int HoursPerDay => (ToHour - FromHour + 24) % 24;
}
