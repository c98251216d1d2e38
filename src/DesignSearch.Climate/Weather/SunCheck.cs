using System.Globalization;
using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Sun;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Holds the stamps, the zone and the latitude of a file against the sun.</summary>
internal sealed class SunCheck(string path, SampleGrid grid, SunTrack sun, HeadReading head, FaultList faults, List<string> repairs)
{
    private const double HalfHourOff = 20;
    private const double ZoneOff = 45;
    private const int BlockDays = 61;

    /// <summary>Finds the middle of the radiation interval.</summary>
    /// <returns>The fit, and whether a row is the mean of an interval.</returns>
    public (SunFit Fit, bool IsMean) Run()
    {
        var middle = grid.StepMin / 2.0;
        var declared = head.Radiation switch { StampMeaning.Ending => -middle, StampMeaning.Starting => middle, _ => head.OffsetMin };
        var isMean = head.Radiation is StampMeaning.Ending or StampMeaning.Starting;
        if (!grid.Values.ContainsKey(WeatherField.Global))
            return (new(declared, declared, 0), isMean);

        var (found, correlation) = new SunFitter(grid, sun, head.Place.ZoneHours).Find(0, grid.Count);
        if (double.IsNaN(found) || correlation < 0.3)
        {
            repairs.Add("The light of the file does not follow the sun well enough to check its clock.");
            return (new(declared, declared, correlation), isMean);
        }

        var used = declared;
        if (head.Radiation == StampMeaning.InstantOrStarting && FromWholeHour(found - middle) < FromWholeHour(found - declared))
        {
            (used, isMean) = (middle, true);
            repairs.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The sun says that a row is the mean of the hour that starts at its stamp, not the value {declared:0.#} min after "
                    + $"it as the head has it; it was read so."));
        }

        CheckHemisphere(correlation);
        var off = found - used;
        if (Math.Abs(off) >= ZoneOff)
            RefuseClock(off);
        else if (Math.Abs(off) >= HalfHourOff)
        {
            used += 30 * Math.Sign(off);
            repairs.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The sun says that the stamps are {Math.Abs(found - declared):0} min off what this format means; the light was "
                    + $"moved by 30 min."));
        }

        CheckBlocks(found);
        return (new(found, used, correlation), isMean);
    }

    private void CheckHemisphere(double correlation)
    {
        var place = head.Place;
        if (Math.Abs(place.LatitudeDeg) < 15 || grid.Count * grid.StepHours < 300 * 24)
            return;
        var mirrored = new SunTrack(place with { LatitudeDeg = -place.LatitudeDeg }, grid.Start.AddHours(-place.ZoneHours), grid.Stamp(grid.Count).AddHours(-place.ZoneHours));
        var (_, other) = new SunFitter(grid, mirrored, place.ZoneHours).Find(0, grid.Count);
        if (other > correlation + 0.02)
            faults.Add(
                path, 0, 0, Number(place.LatitudeDeg),
                FormattableString.Invariant(
                    $"the latitude of the light in the file: its summer is that of {-place.LatitudeDeg:0.##} (south is negative)"));
    }

    private void RefuseClock(double off)
    {
        var place = head.Place;
        var likely = head.StampZoneHours - Math.Round(off / 30) / 2;
        likely = likely > 14 ? likely - 24 : likely < -12 ? likely + 24 : likely;
        if (Math.Abs(place.LongitudeDeg) > 6 && FitsOtherSign(off))
        {
            var zoneToo = head.ZoneIsFixed ? "" : FormattableString.Invariant($"; or the stamps are of UTC{likely:+0.##;-0.##;+0}");
            faults.Add(
                path, 0, 0, Number(place.LongitudeDeg),
                FormattableString.Invariant(
                    $"a longitude the light agrees with: {-place.LongitudeDeg:0.##} would (west is negative){zoneToo}"));
            return;
        }

        faults.Add(
            path, 0, 0,
            FormattableString.Invariant($"UTC{head.StampZoneHours:+0.##;-0.##;+0}"),
            string.Create(
                CultureInfo.InvariantCulture,
                $"a zone of the stamps the light agrees with: it runs {Math.Abs(off):0} min {(off > 0 ? "ahead of" : "behind")} the "
                    + $"clock; UTC{likely:+0.##;-0.##;+0} fits"));
    }

    // Where the rows may be instants or means, half an hour more or less stays open.
    private bool FitsOtherSign(double off)
    {
        var flip = -8 * head.Place.LongitudeDeg;
        double[] open = head.Radiation == StampMeaning.InstantOrStarting ? [0, grid.StepMin / 2.0] : [0];
        return open.Any(shift => Math.Abs(Math.IEEERemainder(off - shift - flip, 1440)) < 25);
    }

    // Two clocks in one file show as a stretch whose light runs off the rest.
    private void CheckBlocks(double found)
    {
        var size = (int)(BlockDays * 24 / grid.StepHours);
        if (!faults.IsEmpty || grid.Count < 2 * size)
            return;
        for (var from = 0; from + size <= grid.Count; from += size)
        {
            var (here, correlation) = new SunFitter(grid, sun, head.Place.ZoneHours).Find(from, from + size);
            if (double.IsNaN(here) || correlation < 0.6 || Math.Abs(here - found) < ZoneOff)
                continue;
            var date = grid.Stamp(from).ToString(grid.Wraps ? "d MMMM" : "yyyy-MM-dd", CultureInfo.InvariantCulture);
            faults.Add(
                path, grid.Lines[from], 0, "",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"one clock through the whole file; about {date} the light runs {Math.Abs(here - found):0} min off the rest (two "
                        + $"zones, or daylight saving?)"));
            return;
        }
    }

    // A wrong zone moves the light by whole hours, so the rest tells an instant from a mean.
    private static double FromWholeHour(double minutes) => Math.Abs(Math.IEEERemainder(minutes, 60));

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
