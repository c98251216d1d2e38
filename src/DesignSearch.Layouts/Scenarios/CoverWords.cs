using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>What is said of a cover that cannot be.</summary>
internal static class CoverWords
{
    public const string LongWaveUnit = "as the share of heat radiation that a film lets through: 0.7 for clear film without dew,"
        + " 0.25 for film made to hold it back, 0 for sheets and for film that is wet inside";

    public static string FilmHasNoU(string key) =>
        $"nothing here: a film that lets heat radiation through ({key}) has no U-value; leave the line out";

    public static string NoSheetLosesMore(string key, double most) => Written.Sentence(
        $"at most {most:0.00}: no sheet loses more under the standard's conditions;",
        $"a figure of greenhouse practice, with wind, clear sky and joints in it, wants {key} = \"house\"");
}
