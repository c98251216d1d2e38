using DesignSearch.Fitting.Logs;
using DesignSearch.Fitting.Nights;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Logged;

namespace DesignSearch.Fitting.Model;

/// <summary>The season model driven by a log: several sets of figures in one pass of the lanes, the mean over the weathers.</summary>
internal sealed class FitModel
{
    private readonly Installation house;
    private readonly FitWeathers weathers;
    private readonly double[] heat;

    public FitModel(Scenario scenario, Layout layout, HouseLog log, FitWeathers weathers)
    {
        this.weathers = weathers;
        Log = log;
        house = LayoutBuilder.Build(scenario with { Greenhouse = scenario.Greenhouse with { Fit = null } }, layout).Installation with { Heater = HeaterNumbers.None };
        heat = [.. new double[weathers.Before], .. log.HeaterW.Select(w => double.IsNaN(w) ? 0 : w)];
    }

    /// <summary>The log.</summary>
    public HouseLog Log { get; }

    /// <summary>Floor of the house [m²].</summary>
    public double FloorM2 => house.House.FloorAreaM2;

    /// <summary>Air from which vents open [°C].</summary>
    public double VentAboveC => house.House.VentAboveC;

    /// <summary>The house with a set of figures, as the kernel takes it.</summary>
    public Installation With(FitPoint point) => HouseFit.Changed(house, point.Loss, point.Sun, point.StoreJPerM2K * FloorM2, point.CouplingWPerM2K * FloorM2);

    /// <summary>Air in the house in every hour of the log, mean of the weathers [°C], by point.</summary>
    /// <param name="points">Sets of figures.</param>
    /// <param name="free">Hours in which the air runs free; in all others it is held as measured.</param>
    public double[][] Air(IReadOnlyList<FitPoint> points, bool[] free)
    {
        var mean = points.Select(_ => new double[Log.Hours]).ToArray();
        foreach (var weather in Each(points, free))
        {
            for (var p = 0; p < mean.Length; p++)
            {
                for (var h = 0; h < Log.Hours; h++)
                    mean[p][h] += weather[p][h] / weathers.Forcings.Count;
            }
        }

        return mean;
    }

    /// <summary>The same under each weather by itself.</summary>
    public double[][][] Each(IReadOnlyList<FitPoint> points, bool[] free)
    {
        var (before, hours) = (weathers.Before, Log.Hours);
        var inside = FitWeathers.Filled(Log.InsideC);
        double[] held = [.. Enumerable.Repeat(double.NaN, before), .. inside.Select((c, h) => free[h] ? double.NaN : c)];
        var plants = points.Select(With).ToArray();
        var all = new double[weathers.Forcings.Count][][];
        Layouts.Assess.Share.Out(all.Length, Environment.ProcessorCount, w =>
        {
            var air = points.Select(_ => new double[before + hours]).ToArray();
            var cases = plants.Select((p, i) => new LayoutCase(p.With(new LoggedNumbers(heat, held, air[i])), null)).ToArray();
            SeasonSimulator.Run(weathers.Forcings[w], cases, new Outcome[cases.Length]);
            all[w] = [.. air.Select(a => a[before..])];
        });
        return all;
    }

    /// <summary>Hours of some nights, free.</summary>
    public bool[] FreeIn(IEnumerable<Night> nights)
    {
        var free = new bool[Log.Hours];
        foreach (var hour in nights.SelectMany(n => n.Hours))
            free[hour] = true;
        return free;
    }
}
