using BenchmarkDotNet.Attributes;
using DesignSearch.Climate;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Benchmarks;

/// <summary>Time of the plane irradiance of one mount through one winter with its warm-up; the light that does not depend on the plane is kept.</summary>
[BenchmarkCategory("planes")]
public class PlaneBenchmarks
{
    private const int Mounts = 50;

    // Room for one result only, so that nothing is found in the cache.
    private readonly PlaneCache cache = new(0);
    private readonly Winter winter;

    public PlaneBenchmarks()
    {
        double[] mean = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7, -1.7];
        double[] sun = [1.75, 2.70, 3.90, 4.70, 5.60, 6.10, 6.30, 5.50, 4.20, 2.80, 1.80, 1.45];
        var climate = new MonthlyClimate(new Place("made", 46, 14, 640, 1), [.. Enumerable.Range(0, 12).Select(m => new MonthMeans(mean[m], mean[m] - 5, sun[m], 1.6, 75))]);
        winter = WinterMaker.Synthetic(climate, new SeasonDates(11, 1, 3, 31), WinterKind.Typical, 1, new());
    }

    /// <summary>How the mount turns.</summary>
    [Params(MountKind.Fixed, MountKind.TwoPosition, MountKind.Stepped, MountKind.Continuous)]
    public MountKind Turning { get; set; }

    [Benchmark(OperationsPerInvoke = Mounts)]
    public void Plane()
    {
        for (var i = 0; i < Mounts; i++)
        {
            var tilt = 30 + 40.0 * i / Mounts;
            cache.Get(winter, Turning switch
            {
                MountKind.TwoPosition => new(MountKind.TwoPosition, MountAxis.Sloping, tilt, 180, 30),
                MountKind.Stepped => new(MountKind.Stepped, MountAxis.Vertical, tilt, 180, 60, Steps: 9),
                MountKind.Continuous => new(MountKind.Continuous, MountAxis.Sloping, tilt, 180, 60),
                _ => Mount.FixedAt(tilt, 180),
            });
        }
    }
}
