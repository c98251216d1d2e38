using DesignSearch.Files;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Testing;

namespace DesignSearch.Layouts.Tests;

/// <summary>Scenarios for the tests: the committed sample (invented), read from a folder of their own with a few lines changed.</summary>
internal sealed class SmallScenario : IDisposable
{
    public SmallScenario(params (string From, string To)[] changes)
    {
        Folder = Directory.CreateTempSubdirectory("designsearch-").FullName;
        var text = File.ReadAllText(Repository.At("runs", "sample-finished", "scenario.toml"))
            .Replace("../../catalogs", Repository.At("catalogs").Replace('\\', '/'), StringComparison.Ordinal);
        foreach (var (from, to) in changes)
        {
            if (!text.Contains(from, StringComparison.Ordinal))
                throw new ArgumentException($"The sample scenario has no '{from}'.", nameof(changes));
            text = text.Replace(from, to, StringComparison.Ordinal);
        }

        File.WriteAllText(Path.Combine(Folder, "scenario.toml"), text);
    }

    public string Folder { get; }

    public Scenario Read() => ScenarioReader.Read(Folder);

    public IReadOnlyList<InputFault> Faults()
    {
        try
        {
            Read();
            return [];
        }
        catch (InputException e)
        {
            return e.Faults;
        }
    }

    public static Layout Of(Scenario scenario, params (string Key, object Value)[] choices)
    {
        var layout = Layout.Bare(scenario.Systems.Choices);
        foreach (var (key, value) in choices)
            layout = layout.With(scenario, key, value);
        return layout;
    }

    /// <summary>A layout with a collector and everything that goes with it.</summary>
    public static Layout Solar(Scenario scenario, params (string Key, object Value)[] changes) => Of(scenario,
    [
        ("collector", "flat-plate-2m2"), ("collector_count", 2), ("mount", "stand-timber"), ("tilt_deg", 60), ("azimuth_deg", 180),
        ("freeze_protection", "drain-back-simple"), ("tank", "cage-1000-used"), ("tank_jacket", "jacket-wool-100"), ("pipe", "pex-25"),
        ("pipe_insulation", "foam-pe-20-large"), ("pump", "solar-pump-19w"), ("start_difference_k", 8), ("stop_difference_k", 3),
        ("release", "fan-coil-small"), ("release_count", 1), ("release_set_c", 5), ("tank_count", 1), ("flow_l_per_min_m2", 0.9), ("release_band_k", 1), ("control_box", "cheapest"), .. changes,
    ]);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
