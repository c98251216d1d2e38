using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Design.Duties;

/// <summary>Asks the rating of every needed part in every state that it is known to meet.</summary>
public static class DutyChecks
{
    private const double Tiny = 1e-9;
    private const double LeastMiss = -1e-3;

    /// <summary>One check for each state in which any part meets anything: the part that has least to spare is told.</summary>
    /// <param name="parts">Everything that a layout needs.</param>
    /// <param name="checks">The checks so far; these are added.</param>
    public static void Add(IReadOnlyList<NeededPart> parts, List<Check> checks)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(checks);
        Span<double> least = stackalloc double[DutyRules.All.Count];
        Span<(int Part, int Duty)> worst = stackalloc (int, int)[DutyRules.All.Count];
        least.Fill(double.PositiveInfinity);
        for (var i = 0; i < parts.Count; i++)
        {
            var duties = parts[i].Duties;
            for (var d = 0; d < duties.Length; d++)
            {
                var (state, margin) = ((int)duties[d].State, duties[d].Margin(parts[i].Part));
                if (margin < least[state])
                    (least[state], worst[state]) = (margin, (i, d));
            }
        }

        for (var state = 0; state < least.Length; state++)
        {
            if (double.IsPositiveInfinity(least[state]))
                continue;
            var (part, passed) = (parts[worst[state].Part], least[state] >= -Tiny);
            var words = DutyWords.Found(part, part.Duties[worst[state].Duty]);
            checks.Add(DutyRules.All[state].Found(passed, passed ? least[state] : Math.Min(least[state], LeastMiss), words));
        }
    }
}
