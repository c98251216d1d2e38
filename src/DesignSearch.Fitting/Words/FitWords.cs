using System.Globalization;
using DesignSearch.Fitting.Logs;
using DesignSearch.Fitting.Nights;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Fitting.Words;

/// <summary>What is said of a log before it is fitted, of what is odd about it, and why it cannot tell.</summary>
internal static class FitWords
{
    public const string NoNights = "No night of the log is whole: inside, outside and heater must be known from two hours after sunset "
        + "until sunrise.";
    public const string NoHeater =
        "The log has no heater in it. Unheated nights tell nothing of the loss: how warm a house stays without heat hangs on "
        + "ground, sky and loss together.";
    public const string Station =
        "The air outside is that of a weather station. On the nights that count a garden is kelvins off it: hang a second "
        + "logger outside, shaded, and log again.";
    public const string Swapped =
        "While the heater runs the air inside is no warmer than that outside: are the two columns, or the two loggers, the wrong "
        + "way round?";
    public const string Slow =
        "The air inside hardly moves when the heater does: the sensor lies in a pot, in the soil, in a box, or the heater's "
        + "column is of another house.";
    public const string NoSunWithoutLoss = "The sun is found with the loss held, and the loss was not learnt.";
    public const string OutsideInSun =
        "The outside sensor leaps on some mornings as air does not: the sun strikes it. The nights are sound, the days are "
        + "not; hang it in the shade to the north.";
    public const string InsideInSun =
        "The inside sensor leaps or passes 60 °C by day: the sun strikes it. The nights are sound; of the sun nothing can be "
        + "said.";

    public static IEnumerable<string> Before(HouseLog log, IReadOnlyList<Night> all, IReadOnlyList<Night> whole, int heated, bool recorded)
    {
        yield return Written.Sentence(
            $"The log holds {Written.Count(log.Hours / 24, "day")} from",
            $"{log.Start.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}: {Written.Count(all.Count, "night")},",
            $"of which {whole.Count} {(whole.Count == 1 ? "is" : "are")} whole and {heated} {(heated == 1 ? "was" : "were")} heated",
            $"enough to tell the loss.");
        if (whole.Count > 0)
        {
            yield return Written.Sentence(
                $"In the whole nights the air inside stood {whole.Average(n => RiseK(log, n)):0.0} K",
                $"over that outside, on {whole.Average(n => n.Hours.Average(h => log.HeaterW[h])):0} W of heat.");
        }

        yield return recorded
            ? "It can tell the loss, and the sun: sky, wind and sun of those very days stand in the run's weather file."
            : "Sky, wind and sun of those days are not known: each night has those of twelve made nights that are most like it, as "
                + "cold, with as much of a swing and beside days as sunny as the house felt them. "
                + "That is enough for the loss; of the sun it tells less.";
        yield return "It cannot tell leaks from a thin cover, nor the ground from the floor's edge: one factor stands for the whole loss.";
    }

    public static string LeastChange(double change) => Written.Sentence(
        $"Nor a door or vent that stood slightly ajar from some night on: a loss that changed by less than about",
        $"{5 * Math.Ceiling(20 * (Math.Exp(change) - 1)):0} % cannot be told from the weather of these nights.",
        $"Look at them every evening.");

    private const string Loses = "A door or vent ajar, a pane broken, a heater not logged in full?";
    private const string Keeps = "Snow on the cover, a second heater, a sensor that was moved?";

    private static double RiseK(HouseLog log, Night night) =>
        night.Hours.Where(h => !double.IsNaN(log.InsideC[h])).Average(h => log.InsideC[h] - log.OutsideC[h]);

    public static string Other(IReadOnlyList<Night> nights, double offK)
    {
        static string Day(DateTime day) => day.ToString("d MMMM", CultureInfo.InvariantCulture);
        var when = nights.Count == 1
            ? $"The night of {Day(nights[0].Evening)} is"
            : Written.Sentence($"The {nights.Count} nights from {Day(nights[0].Evening)} to {Day(nights[^1].Evening)} are");
        return Written.Sentence(
            $"{when} of another house: inside it stood {Math.Abs(offK):0.0} K {(offK < 0 ? "colder" : "warmer")} than the other nights",
            $"would have it. {(offK < 0 ? Loses : Keeps)} {(nights.Count == 1 ? "It was" : "They were")} left out.");
    }

    public static string Strange(double loss) => Written.Sentence(
        $"It loses {loss:0.0#} times what the drawing does. That may be so; look first at the heater's watts, at the sizes in",
        $"the scenario, and for a vent that does not shut.");

    public static string StrangeSun(double sun) => Written.Sentence(
        $"It takes {sun:0.0#} times the sun of the drawing. Look for shade, for the way the ridge runs, and for the clock.");

    public static string NoSuchSystem(string column) =>
        $"The column '{column}' names no system of this layout: it was left out.";

    public static string SeldomSwitch(int minutes) => Written.Sentence(
        $"The heater is known only as running or resting, looked at every {minutes} minutes: a thermostat clicks faster.",
        $"A plug-in meter would tell it better.");

    public static string TooFewHeated(int heated) => Written.Sentence(
        $"{(heated == 0 ? "No night was" : "Only one night was")} heated enough to tell the loss; two are the least,",
        $"three held at 7 to 8 °C do it well.");

    public static string TooWide(double half) => Written.Sentence(
        $"These nights leave the loss open from {Math.Exp(-half):0.00} to {Math.Exp(half):0.00} times what was found:",
        $"hold the house warmer, or log more nights.");

    public static string TooFewDays(int days) => Written.Sentence(
        $"{(days == 0 ? "No day" : days == 1 ? "Only one day" : $"Only {days} days")} can be read whole with the vents shut;",
        $"the sun takes three at least, better thirty.");

    public static string SunTooWide(int days, double half) => Written.Sentence(
        $"{days} days leave the sun open from {Math.Exp(-half):0.00} to {Math.Exp(half):0.00} times what was found:",
        $"it stays the drawing's.");
}
