using DesignSearch.Files;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Runs.Folder;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Runs.Simulate;

/// <summary>Simulates one given layout, without a search.</summary>
public static class SimulateRun
{
    /// <summary>Simulates a layout file in a run's scenario.</summary>
    /// <param name="folder">The run; nothing in it is written.</param>
    /// <param name="layoutFile">The layout.</param>
    /// <param name="weatherFile">A weather file whose winters take the place of the scenario's, as recorded; null for the scenario's own.</param>
    /// <param name="hourly">Takes every hour of every winter, warm-up included, with the name of the winter and whether it counts; null where nobody wants them.</param>
    /// <exception cref="InputException">With every fault of scenario, catalogues, weather and layout.</exception>
    public static Simulation Execute(RunFolder folder, string layoutFile, string? weatherFile, Action<string, bool, HourRow>? hourly)
    {
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

        return new Simulation(scenario.Name, scenario.Money.Currency, scenario.Greenhouse.FrostLimitC, HouseLoss.CoefficientWPerK(built.Installation.House), judged);
    }
}
