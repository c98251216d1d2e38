using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Asks whether thermostats that the scenario fixes go with the limit that must hold.</summary>
internal static class ThermostatDoubts
{
    private const double MuchK = 8;

    /// <summary>What is in doubt, a sentence each.</summary>
    public static IEnumerable<string> Of(Scenario scenario)
    {
        var limit = scenario.Greenhouse.FrostLimitC;
        foreach (var varied in scenario.Choices.Where(c => c.Choice is NumberChoice { AboveLimit: true } && IsInUse(c.Choice, scenario)))
        {
            var (least, most) = (varied.Levels.Min(l => l.Number), varied.Levels.Max(l => l.Number));
            if (most < limit)
                yield return PlaceDoubtWords.NeverWarms(varied.Choice.Key, most, limit);
            else if (least > limit + MuchK)
                yield return PlaceDoubtWords.WarmsTooMuch(varied.Choice.Key, least, limit);
        }
    }

    private static bool IsInUse(Choice choice, Scenario scenario) =>
        choice.Under is not { } part || (scenario.LevelsOf(part).Any(l => !l.IsNone) && IsInUse(part, scenario));
}
