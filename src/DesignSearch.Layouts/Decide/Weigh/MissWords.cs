using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Words;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>How a layout misses, and what would help, in words.</summary>
internal static class MissWords
{
    public const string Release = "heat release from the tank";
    public const string Sun = "sun";
    public const string Leak = "leaking air";
    public const string CoverRest = "through the cover, less what floor and water gave";
    public const string FloorRest = "floor and water, less what went through the cover";
    public const string NothingHelps = "No single change among the choices of the scenario brings it nearer.";

    public const string NoBudgetHelps =
        "Changing one choice at a time, nothing that holds was found at any budget: allow more kinds of parts, or a lower limit.";

    public static string ColdestHour(HourRow row, bool plantsStandApart, IEnumerable<HourFlow> balance)
    {
        var plants = plantsStandApart ? Written.Sentence($"{row.PlantsC:0.0} °C among the plants, ") : "";
        var flows = balance.Select(f => Written.Sentence($"{f.Name} {f.Watts:0} W"));
        return Written.Sentence(
            $"Its coldest hour begins at {row.LocalTime:HH:mm} on {row.LocalTime:d MMMM}:",
            $"{plants}{row.AirMeanC:0.0} °C inside, {row.OutsideC:0.0} °C outside. {string.Join(", ", flows)}.");
    }

    public static string HelpsMost(string choice, string to, string from, int frostHours, decimal priceMore, string currency, Check? failed)
    {
        var over = failed is null ? "" : $" (over the limit: {failed.Title})";
        return Written.Sentence(
            $"What would help most is another {choice}: {to} instead of {from} leaves {WayWords.Hours(frostHours)}",
            $"in the worst winter and costs {priceMore:0} {currency} more to build{over}.");
    }

    public static string HoldsFor(decimal price, MoneyTerms money, string title) => Written.Sentence(
        $"With {price:0} instead of {money.Budget:0} {money.Currency} to build, {title} holds",
        $"(found by changing one choice at a time; a cheaper one may exist).");
}
