using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Weather;

/// <summary>Turns the samples of a grid into means of whole hours of local standard time.</summary>
internal sealed class HourMeans
{
    private const int Parts = 12;
    private readonly SampleGrid grid;

    public HourMeans(SampleGrid grid, double radiationCentreMin)
    {
        this.grid = grid;
        if (grid.Wraps)
        {
            (Start, Hours) = (new DateTime(TableReader.NominalYear, 1, 1, 0, 0, 0, DateTimeKind.Unspecified), 8760);
            return;
        }

        var first = grid.Start.AddMinutes(radiationCentreMin - grid.StepMin / 2.0);
        var last = grid.Stamp(grid.Count - 1).AddMinutes(radiationCentreMin + grid.StepMin / 2.0);
        Start = NearestHour(first);
        Hours = (int)(NearestHour(last) - Start).TotalHours;
    }

    public DateTime Start { get; }

    public int Hours { get; }

    /// <summary>Means of values that run straight between their instants.</summary>
    /// <param name="values">One a slot, no NaN.</param>
    /// <param name="centreMin">The instant of a value after its stamp [min].</param>
    /// <param name="isMean">True when a value is already the mean of its interval.</param>
    public double[] OfLevel(double[] values, double centreMin, bool isMean)
    {
        if (isMean && Aligned(centreMin))
            return OfAlignedMeans(values, centreMin);
        var result = new double[Hours];
        for (var h = 0; h < Hours; h++)
        {
            for (var p = 0; p < Parts; p++)
                result[h] += Straight(values, h * 60 + (p + 0.5) * 60 / Parts, centreMin) / Parts;
        }

        return result;
    }

    /// <summary>Means of irradiance: the clearness runs straight between the samples, and each day keeps its energy.</summary>
    /// <param name="values">[W/m²], no NaN.</param>
    /// <param name="above">Irradiance above the atmosphere of the same samples.</param>
    /// <param name="centreMin">Middle of a sample after its stamp [min].</param>
    /// <param name="isMean">True when a value is the mean of its interval.</param>
    /// <param name="sun">The sun over the place.</param>
    /// <param name="zoneHours">Local standard time minus UTC.</param>
    public double[] OfIrradiance(double[] values, double[] above, double centreMin, bool isMean, SunTrack sun, double zoneHours)
    {
        if (isMean && Aligned(centreMin))
            return OfAlignedMeans(values, centreMin);
        var clearness = Clearness(values, above);
        var result = new double[Hours];
        for (var h = 0; h < Hours; h++)
        {
            for (var p = 0; p < Parts; p++)
            {
                var minute = h * 60 + (p + 0.5) * 60 / Parts;
                var light = sun.Horizontal(Start.AddMinutes(minute).AddHours(-zoneHours));
                if (light > 0)
                    result[h] += Straight(clearness, minute, centreMin) * light / Parts;
            }
        }

        KeepDailyEnergy(result, values, centreMin);
        return result;
    }

    /// <summary>The slots whose samples touch an hour, for flags.</summary>
    public bool[] Any(bool[] flags, double centreMin)
    {
        var result = new bool[Hours];
        for (var i = 0; i < flags.Length; i++)
        {
            var hour = (int)Math.Floor((grid.Stamp(i).AddMinutes(centreMin) - Start).TotalHours);
            if (grid.Wraps)
                hour = (hour + Hours) % Hours;
            if (flags[i] && hour >= 0 && hour < Hours)
                result[hour] = true;
        }

        return result;
    }

    private static DateTime NearestHour(DateTime t) => t.Date.AddHours(Math.Floor(t.TimeOfDay.TotalHours + 0.5));

    private bool Aligned(double centreMin)
    {
        var begin = (grid.Start.AddMinutes(centreMin - grid.StepMin / 2.0) - Start).TotalMinutes;
        return 60 % grid.StepMin == 0 && Math.Abs(Math.IEEERemainder(begin, grid.StepMin)) < 1e-6;
    }

    private double[] OfAlignedMeans(double[] values, double centreMin)
    {
        var (sum, count) = (new double[Hours], new int[Hours]);
        for (var i = 0; i < values.Length; i++)
        {
            var hour = (int)Math.Floor((grid.Stamp(i).AddMinutes(centreMin) - Start).TotalHours);
            if (grid.Wraps)
                hour = (hour % Hours + Hours) % Hours;
            if (hour >= 0 && hour < Hours)
                (sum[hour], count[hour]) = (sum[hour] + values[i], count[hour] + 1);
        }

        return [.. sum.Select((s, h) => s / Math.Max(1, count[h]))];
    }

    private double Straight(double[] values, double minute, double centreMin)
    {
        var n = values.Length;
        var position = (minute - (grid.Start - Start).TotalMinutes - centreMin) / grid.StepMin;
        var i = (int)Math.Floor(position);
        var part = position - i;
        int Slot(int s) => grid.Wraps ? (s % n + n) % n : Math.Clamp(s, 0, n - 1);
        var (a, b) = (values[Slot(i)], values[Slot(i + 1)]);
        return a + part * (b - a);
    }

    // Where the sun is too low to tell, the clearness of the nearest sample counts.
    private static double[] Clearness(double[] values, double[] above)
    {
        var k = values.Select((v, i) => above[i] >= 20 ? v / above[i] : double.NaN).ToArray();
        var (forward, backward) = ((double[])k.Clone(), (double[])k.Clone());
        for (var i = 1; i < k.Length; i++)
            forward[i] = double.IsNaN(forward[i]) ? forward[i - 1] : forward[i];
        for (var i = k.Length - 2; i >= 0; i--)
            backward[i] = double.IsNaN(backward[i]) ? backward[i + 1] : backward[i];
        for (var i = 0; i < k.Length; i++)
        {
            if (double.IsNaN(k[i]))
                k[i] = i + 1 < k.Length && above[i + 1] > above[i] ? Known(backward[i], forward[i]) : Known(forward[i], backward[i]);
        }

        return k;
    }

    private static double Known(double first, double second) => !double.IsNaN(first) ? first : double.IsNaN(second) ? 0 : second;

    private void KeepDailyEnergy(double[] hours, double[] samples, double centreMin)
    {
        var midnight = Start.Hour;
        var days = (Hours + midnight) / 24 + 1;
        var (want, have) = (new double[days], new double[days]);
        for (var i = 0; i < samples.Length; i++)
        {
            var hour = (grid.Stamp(i).AddMinutes(centreMin) - Start).TotalHours;
            var day = (int)Math.Floor(((grid.Wraps ? (hour + Hours) % Hours : hour) + midnight) / 24);
            if (day >= 0 && day < days)
                want[day] += samples[i] * grid.StepHours;
        }

        for (var h = 0; h < Hours; h++)
            have[(h + midnight) / 24] += hours[h];
        for (var h = 0; h < Hours; h++)
        {
            var day = (h + midnight) / 24;
            if (have[day] > 0)
                hours[h] *= Math.Clamp(want[day] / have[day], 0.5, 2);
        }
    }
}
