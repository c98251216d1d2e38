using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Papers;

/// <summary>What all papers have in common, in words.</summary>
internal static class PaperWords
{
    /// <summary>Degrees on a paper.</summary>
    public const string Celsius = "°C";

    /// <summary>What is written down whatever the plant is.</summary>
    public static IReadOnlyList<LogColumn> Always { get; } =
        [new("coldest air outside", Celsius), new("coldest air inside", Celsius), new("warmest air inside", Celsius)];

    /// <summary>How a thermostat is brought to its setting: ice near mains is no way to try anything.</summary>
    /// <param name="volts">Its voltage [V].</param>
    public static string Cooled(double volts) => volts >= SupplyPlan.MainsVolts
        ? "wait for a cold evening, a good thermometer beside its feeler"
        : "cool its feeler with ice in a closed bag, a good thermometer beside it, then let it warm";

    /// <summary>A thing with how many of it there are and where.</summary>
    /// <param name="names">Names of its parts.</param>
    /// <param name="count">How many; not said of one.</param>
    /// <param name="where">Where it is.</param>
    public static string Thing(IReadOnlyList<string> names, decimal count, string where)
    {
        var many = count > 1 ? Written.Sentence($" ({count:0} of them)") : "";
        return $"{Written.Joined(names)}{many}: {where}";
    }
}
