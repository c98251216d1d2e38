using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What turning a collector gains, in words.</summary>
internal static class TurningWords
{
    public const string NotBothAllowed = "No answer: the scenario does not allow both a turning and a fixed collector.";
    public const string NotWorkedOut = "No answer: it was not worked out.";
    public const string NoCollector = "No answer: no layout with a collector passed every check.";
    public const string SavesNothing = "; that saves neither frost nor stand-by heat, so no price of collector makes turning pay.";

    public static string Gained(double areaM2, TurningKind turning, double turnedKwh, double fixedKwh, string? failed)
    {
        var heatAlone = failed is null ? "" : $" (the turning one fails {failed}, so it is shown for its heat alone)";
        return Written.Sentence(
            $"{areaM2:0.0} m² turned ({How(turning)}) bring {turnedKwh:0} kWh a winter into the tank,",
            $"fixed {fixedKwh:0}{heatAlone}");
    }

    public static string NoEqualArea(int times) =>
        Written.Sentence($"; even {times} times the area, fixed, does not protect as well, so there is no equal area.");

    public static string Pays(double extraM2, decimal partsMore, string currency, double paysAbovePerM2, decimal perM2) => Written.Sentence(
        $"; {extraM2:0.0#} m² more fixed collector protect as well. The turning parts cost {partsMore:0} {currency} more over the years,",
        $"so turning pays only where a square metre of collector on its stand costs more than about {paysAbovePerM2:0};",
        $"here it costs {perM2:0}.");

    private static string How(TurningKind turning) => turning switch
    {
        TurningKind.TwoPosition => "two positions a day",
        TurningKind.Stepped => "in steps",
        _ => "after the sun",
    };
}
