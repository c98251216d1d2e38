using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Holds the daily and yearly course of the air against the sun and the place: clock, hemisphere, sign, unit, shelter.</summary>
internal sealed class AirCourse(string path, SampleGrid grid, HeadReading head, FaultList faults, List<string> doubts)
{
    // The first wave of the mean daily course peaks 14 to 15.5 h after solar midnight in all of nine open files.
    private const double UsualPeak = 14.7;
    private const double ClockDoubtH = 3;
    private const double ClockWrongH = 5;
    private const double ReversedH = 8;
    private const double ClearWaveK = 1.5;
    private const double LeastWaveK = 0.5;
    private const int YearDays = 300;
    private const int EnoughDays = 10;
    private const double YearWaveK = 3;
    private const double DoubtK = 17;
    private const double WrongK = 24;
    private readonly double[] air = grid.Values[WeatherField.Air];
    private readonly double latitude = head.Place.LatitudeDeg;

    /// <summary>Says what cannot be and what is hard to believe.</summary>
    public void Run()
    {
        if (grid.Count * grid.StepHours < EnoughDays * 24 || grid.StepHours > 6)
            return;
        var (dayWave, peak) = Wave(t => (t.TimeOfDay.TotalHours + head.Place.LongitudeDeg / 15 - head.Place.ZoneHours) / 24);
        var off = Math.IEEERemainder(peak * 24 - UsualPeak, 24);
        var year = grid.Count * grid.StepHours >= YearDays * 24;
        var (yearWave, warmest) = year ? Wave(t => (t.DayOfYear - 1) / 365.0) : (0, 0);
        var summer = latitude < 0 ? 0.06 : 0.56;
        var seasonReversed = year && Math.Abs(latitude) > 20 && yearWave > YearWaveK && Math.Abs(Math.IEEERemainder(warmest - summer, 1)) > 0.33;
        if (seasonReversed && dayWave > LeastWaveK && Math.Abs(off) > ReversedH)
            Refuse("", "air that is warm by day and in summer; it is the other way round (its sign is swapped)");
        else if (seasonReversed)
            Refuse(
                Number(latitude),
                FormattableString.Invariant($"a latitude whose summer is that of the air: {-latitude:0.##} would (south is negative)"));
        else if (dayWave > LeastWaveK)
            Clock(dayWave, off);
        if (!seasonReversed)
            Season();
        Shelter(year, yearWave);
    }

    private void Clock(double wave, double off)
    {
        if (Math.Abs(off) < ClockDoubtH)
            return;
        var zone = head.StampZoneHours + Math.Round(off);
        zone = zone > 14 ? zone - 24 : zone < -12 ? zone + 24 : zone;
        var words = FormattableString.Invariant($"the air is warmest {Math.Abs(off):0} h too {(off > 0 ? "late" : "early")} in the day");
        var fits = FormattableString.Invariant($"stamps of UTC{zone:+0;-0;+0} would fit");
        if (Math.Abs(off) >= ClockWrongH && wave > ClearWaveK)
            Refuse(
                FormattableString.Invariant($"UTC{head.StampZoneHours:+0.##;-0.##;+0}"),
                $"a clock the air agrees with: {words}; {fits} (UTC stamps, a clock 12 h off, or a longitude of the wrong sign?)");
        else
            doubts.Add($"By the clock of the file {words}; {fits}. Look at the zone of the stamps, and whether the sensor is in the sun or indoors.");
    }

    // What the air of a latitude and height is, to within 17 K at all but one in a hundred of the stations of the program's table; a rule of thumb of our own.
    private void Season()
    {
        var months = Enumerable.Range(0, air.Length).Where(i => !double.IsNaN(air[i])).GroupBy(i => grid.Stamp(i).Month)
            .Where(m => m.Count() * grid.StepHours > EnoughDays * 24).Select(m => (Month: m.Key, Off: m.Average(i => air[i]) - Usual(m.Key))).ToArray();
        if (months.Length == 0)
            return;
        var (month, off) = months.MaxBy(m => Math.Abs(m.Off));
        if (Math.Abs(off) < DoubtK)
            return;
        var words = FormattableString.Invariant($"month {month} is {Math.Abs(off):0} K {(off > 0 ? "warmer" : "colder")} than its latitude and height have it");
        if (Math.Abs(off) > WrongK)
            Refuse(Number(latitude), $"air of the place in °C: {words} (another unit, or a latitude or height of another place?)");
        else
            doubts.Add($"The air of {words}: look at the unit, the latitude and the height.");
    }

    private double Usual(int month) =>
        27 - 0.0075 * latitude * latitude - 5.5 * Math.Clamp(head.Place.ElevationM, 0, 5000) / 1000 - 0.25 * latitude * Math.Cos(2 * Math.PI * (month - 1.2) / 12);

    private void Shelter(bool year, double yearWave)
    {
        var perDay = (int)Math.Round(24 / grid.StepHours);
        var ranges = air.Chunk(perDay).Where(d => d.Length == perDay && !d.Any(double.IsNaN)).Select(d => d.Max() - d.Min()).ToArray();
        if (ranges.Length >= EnoughDays && ranges.Average() < 1)
            doubts.Add(FormattableString.Invariant($"From day to night the air moves by {ranges.Average():0.0} K only: daily means, or a sensor indoors or in the ground?"));
        if (ranges.Length >= EnoughDays && ranges.Average() > 21)
            doubts.Add(FormattableString.Invariant($"From night to day the air moves by {ranges.Average():0} K on average: a sensor in the sun, or inside the greenhouse?"));
        if (year && yearWave < 2 && Math.Abs(latitude) > 30)
            doubts.Add(FormattableString.Invariant($"From winter to summer the air moves by {2 * yearWave:0.0} K only: a sensor indoors?"));
    }

    // Amplitude of the first wave over a circle, and where on it the wave is highest, 0 to 1.
    private (double Amplitude, double Peak) Wave(Func<DateTime, double> turn)
    {
        var known = Enumerable.Range(0, air.Length).Where(i => !double.IsNaN(air[i])).ToArray();
        var mean = known.Average(i => air[i]);
        var (cos, sin) = (0.0, 0.0);
        foreach (var i in known)
        {
            var angle = 2 * Math.PI * turn(grid.Stamp(i));
            (cos, sin) = (cos + 2 * (air[i] - mean) * Math.Cos(angle) / known.Length, sin + 2 * (air[i] - mean) * Math.Sin(angle) / known.Length);
        }

        return (Math.Sqrt(cos * cos + sin * sin), Math.Atan2(sin, cos) / (2 * Math.PI));
    }

    private void Refuse(string value, string expected) => faults.Add(path, 0, 0, value, expected);

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
