using DesignSearch.Climate;

namespace DesignSearch.Benchmarks;

/// <summary>Time of the plane irradiance of one mount through one winter, on one core and warmed up, nothing kept between mounts but the winter's own light.</summary>
internal static class PlaneTimes
{
    private const int Mounts = 200;
    private const int Rounds = 20;

    public static void Run()
    {
        double[] mean = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7, -1.7];
        double[] sun = [1.75, 2.70, 3.90, 4.70, 5.60, 6.10, 6.30, 5.50, 4.20, 2.80, 1.80, 1.45];
        var climate = new MonthlyClimate(new Place("made", 46, 14, 640, 1), [.. Enumerable.Range(0, 12).Select(m => new MonthMeans(mean[m], mean[m] - 5, sun[m], 1.6, 75))]);
        var winter = WinterMaker.Synthetic(climate, new SeasonDates(11, 1, 3, 31), WinterKind.Typical, 1, new());
        Console.WriteLine(FormattableString.Invariant($"| mount | ms a winter of {winter.Hours} h, processor time, mean of {Rounds * Mounts} |"));
        Console.WriteLine("| --- | --- |");
        foreach (var (name, make) in new (string, Func<double, Mount>)[]
        {
            ("fixed", tilt => Mount.FixedAt(tilt, 180)),
            ("two positions about the slope", tilt => new(MountKind.TwoPosition, MountAxis.Sloping, tilt, 180, 30)),
            ("nine steps about a post", tilt => new(MountKind.Stepped, MountAxis.Vertical, tilt, 180, 60, Steps: 9)),
            ("continuous about the slope", tilt => new(MountKind.Continuous, MountAxis.Sloping, tilt, 180, 60)),
        })
        {
            // Room for one result only, so that nothing is found in the cache.
            var cache = new PlaneCache(0);
            void Round()
            {
                for (var i = 0; i < Mounts; i++)
                    cache.Get(winter, make(30 + 40.0 * i / Mounts));
            }

            for (var round = 0; round < 20; round++)
                Round();
            var start = Environment.CpuUsage.UserTime;
            for (var round = 0; round < Rounds; round++)
                Round();
            Console.WriteLine(FormattableString.Invariant($"| {name} | {(Environment.CpuUsage.UserTime - start).TotalMilliseconds / Mounts / Rounds:0.000} |"));
        }
    }
}
