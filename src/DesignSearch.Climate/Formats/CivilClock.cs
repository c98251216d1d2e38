namespace DesignSearch.Climate.Formats;

/// <summary>Takes daylight saving out of the stamps of a household clock.</summary>
internal static class CivilClock
{
    /// <summary>
    /// Where the clock goes back an hour, everything since it went forward (or since the start) was summer time and is set back; a step
    /// forward that is never taken back is summer time to the end when it falls in a spring month of either hemisphere, else a gap.
    /// </summary>
    /// <param name="stamps">In the order of the file; changed in place.</param>
    /// <returns>A sentence when something was changed.</returns>
    public static string? ToStandard(List<DateTime> stamps)
    {
        var step = TimeSteps.UsualMinutes(stamps);
        var (summerFrom, changed) = (0, 0);
        var knowsStart = false;
        for (var i = 1; i < stamps.Count; i++)
        {
            var minutes = (stamps[i] - stamps[i - 1]).TotalMinutes;
            if (Math.Abs(minutes - step - 60) < 1)
            {
                (summerFrom, knowsStart) = (i, true);
            }
            else if (Math.Abs(minutes - step + 60) < 1 && step <= 60)
            {
                Shift(stamps, summerFrom, i);
                (changed, summerFrom, knowsStart) = (changed + i - summerFrom, i, false);
            }
        }

        if (knowsStart && stamps[summerFrom] is { Hour: 1 or 2 or 3, Month: 3 or 4 or 9 or 10, DayOfWeek: DayOfWeek.Sunday })
        {
            Shift(stamps, summerFrom, stamps.Count);
            changed += stamps.Count - summerFrom;
        }

        return changed == 0 ? null : FormattableString.Invariant($"The clock of the file keeps daylight saving: {changed} rows were set back one hour to standard time.");
    }

    private static void Shift(List<DateTime> stamps, int from, int to)
    {
        for (var i = from; i < to; i++)
            stamps[i] = stamps[i].AddHours(-1);
    }
}
