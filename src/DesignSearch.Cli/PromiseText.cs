using System.Globalization;
using DesignSearch.Fitting.Promise;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Cli;

/// <summary>How it is said what a layout promised and what came.</summary>
internal static class PromiseText
{
    private const double Percent = 100;

    public static string Kept(Promised promised) => Written.Sentence(
        $"In {promised.Nights.Count(n => n.IsKept)} of {Written.Count(promised.Nights.Count, "night")} the lowest hour was what was",
        $"promised for that air outside, or warmer. Sky and wind are not known: between stands what they can do.");

    public static string Changed(Promised promised) => promised.ChangedFrom is { } from
        ? Written.Sentence(
            $"From {from.ToString("d MMMM", CultureInfo.InvariantCulture)} on something is otherwise: the house is {Math.Abs(promised.ChangeK):0.0} K",
            $"{(promised.ChangeK < 0 ? "colder" : "warmer")} against its promise than before.")
        : "Nothing changed from one night on.";

    public static string System(SystemHeat system) =>
        Written.Sentence($"{system.Name}: {system.CameKwh:0.0} kWh in these nights, {system.PromisedKwh:0.0} kWh promised.");

    public static string Wanting(SystemHeat system) =>
        Written.Sentence($"Short is {system.Name}: it gave {Percent * system.CameKwh / system.PromisedKwh:0} % of what was promised. Look there first.");
}
