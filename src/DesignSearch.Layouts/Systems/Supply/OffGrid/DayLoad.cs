using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>What devices draw from a battery, at most: known before anything is simulated.</summary>
/// <param name="StandingW">At every hour; what runs for some hours of a day is spread over it [W].</param>
/// <param name="DaylightW">Besides, while there is daylight [W].</param>
/// <param name="BurstWh">What is drawn at once of that which was spread [W·h].</param>
internal readonly record struct DayLoad(double StandingW, double DaylightW, double BurstWh)
{
    private const double HoursPerDay = 24;

    // Cables lose up to a twentieth.
    private const double Cables = 1 / (1 - CableDrop.UsualLimit);

    /// <summary>That of devices.</summary>
    /// <param name="devices">Everything on low voltage.</param>
    /// <param name="converted">The lines behind converters.</param>
    public static DayLoad Of(IReadOnlyList<Circuit> devices, IReadOnlyList<LowLine> converted)
    {
        var (standing, daylight, burst) = (0.0, 0.0, 0.0);
        foreach (var device in devices)
        {
            var watts = device.Watts * Cables / (converted.FirstOrDefault(l => l.Volts == device.Volts)?.Supply?.Efficiency ?? 1);
            if (device.HoursADay is { } hours)
                (standing, burst) = (standing + (watts * hours / HoursPerDay), burst + (watts * hours));
            else if (device.Runs == RunTime.Daylight)
                daylight += watts;
            else
                standing += watts;
        }

        return new(standing, daylight, burst);
    }
}
