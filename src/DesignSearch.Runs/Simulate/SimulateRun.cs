using DesignSearch.Files;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Runs.Folder;
using DesignSearch.Season;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Runs.Simulate;

/// <summary>Simulates given layouts, without a search.</summary>
public static class SimulateRun
{
    // Wide enough to fill the lanes of two threads, short enough that figures come soon.
    private const int Block = 64;

    /// <summary>Simulates a layout file in a run's scenario.</summary>
    /// <param name="folder">The run; nothing in it is written.</param>
    /// <param name="layoutFile">The layout.</param>
    /// <param name="weatherFile">A weather file whose winters take the place of the scenario's, as recorded; null for the scenario's own.</param>
    /// <param name="hourly">Takes every hour of every winter, warm-up included, with the name of the winter and whether it counts; null where nobody wants them.</param>
    /// <exception cref="InputException">With every fault of scenario, catalogues, weather and layout.</exception>
    public static Simulation Execute(RunFolder folder, string layoutFile, string? weatherFile, Action<string, bool, HourRow>? hourly)
    {
        folder.RequireThere();
        var scenario = ScenarioReader.Read(folder.Path, weatherFile);
        var faults = new FaultList();
        var layout = LayoutFileReader.Read(layoutFile, layoutFile, scenario, faults);
        faults.ThrowIfAny();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario, asRecorded: weatherFile is not null));
        var judged = new Judge(assessor).Of(layout);
        var built = LayoutBuilder.Build(scenario, layout);
        if (hourly is not null)
        {
            foreach (var (winter, _, forcing) in assessor.Winters.Winters)
                SeasonSimulator.Run(forcing, new LayoutCase(built.Installation, assessor.Plane(built, winter)), row => hourly(winter.Name, row.Hour >= winter.WarmUpHours, row));
        }

        var lossWPerK = HeldHouse.LossWPerK(built.Installation, HeldNight.Frosty, scenario.Assumptions, scenario.Place.ElevationM);
        string[] files = [layoutFile, .. scenario.Files.Select(f => f.Path)];
        return new Simulation(scenario.Name, scenario.Money.Currency, scenario.Greenhouse.FrostLimitC, lossWPerK, judged, files);
    }

    /// <summary>Simulates many layouts in a run's scenario, in blocks side by side, and tells each when its block is done.</summary>
    /// <param name="folder">The run; nothing in it is written.</param>
    /// <param name="read">Reads the layouts; asked anew for each weather, since the parts of a layout are those of its scenario.</param>
    /// <param name="weatherFiles">Weather files to judge on, one after another, as recorded; none for the scenario's winters.</param>
    /// <param name="threads">Threads to use, 1 or more; what comes out does not depend on how many.</param>
    /// <param name="tell">Takes the layouts in their order, weather after weather.</param>
    /// <param name="stop">Ends it between two blocks.</param>
    /// <exception cref="InputException">With every fault of scenario, weathers and layouts; nothing was told before.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Many(
        RunFolder folder,
        Func<Scenario, FaultList, IReadOnlyList<NamedLayout>> read,
        IReadOnlyList<string> weatherFiles,
        int threads,
        Action<SimulatedLayout> tell,
        CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(weatherFiles);
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(tell);
        var faults = new FaultList();
        var works = new List<(string Weather, LayoutAssessor Assessor, IReadOnlyList<NamedLayout> Layouts)>();
        foreach (var weather in weatherFiles.Count == 0 ? [null] : weatherFiles.Cast<string?>())
        {
            try
            {
                var scenario = ScenarioReader.Read(folder.Path, weather);
                var own = new FaultList();
                var layouts = read(scenario, own);
                own.ThrowIfAny();
                works.Add((weather ?? "", new(scenario, WinterSet.Make(scenario, asRecorded: weather is not null)), layouts));
            }
            catch (InputException e)
            {
                faults.AddRange(e);
            }
        }

        faults.ThrowIfAny();
        foreach (var (weather, assessor, layouts) in works)
        {
            foreach (var block in layouts.Chunk(Block))
            {
                stop.ThrowIfCancellationRequested();
                var priced = block.Select(l => assessor.Price(l.Layout)).ToList();
                var outcomes = assessor.Simulate([.. priced.Select(p => p.Built)], threads);
                for (var i = 0; i < block.Length; i++)
                    tell(Told(block[i].Name, weather, assessor, priced[i], outcomes[i]));
            }
        }
    }

    private static SimulatedLayout Told(string name, string weather, LayoutAssessor assessor, PricedLayout priced, Outcome[] outcomes)
    {
        var fails = assessor.Checks(priced, outcomes).Where(c => !c.Passed).Select(c => c.Id).ToList();
        var figures = assessor.Figures(priced, outcomes, fails.Count == 0);
        var winters = assessor.Winters.Winters;
        return new SimulatedLayout
        {
            Name = name,
            Weather = weather,
            Holds = figures.Holds,
            Fails = fails,
            BuildPrice = figures.BuildPrice,
            LifeCost = figures.LifeCost,
            Score = figures.Score(assessor.BareFrostHours),
            FrostHours = figures.FrostHours,
            WorstFrostHours = figures.WorstFrostHours,
            FrostDegreeHoursKh = figures.FrostDegreeHoursKh,
            LowestAirC = figures.LowestAirC,
            StandbyKwh = assessor.Weighted(outcomes, (o, _) => o.StandbyKwh),
            ElectricKwh = assessor.Weighted(outcomes, (o, i) => o.ElectricKwh + assessor.DriveKwh(priced.Built, winters[i].Winter)),
            CollectorYieldKwh = assessor.Weighted(outcomes, (o, _) => o.CollectorYieldKwh),
            PumpHours = assessor.Weighted(outcomes, (o, _) => o.PumpHours),
        };
    }
}
