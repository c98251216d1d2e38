using System.Globalization;
using System.Text;
using DesignSearch.Files;
using DesignSearch.Fitting.Logs;
using DesignSearch.Fitting.Promise;
using DesignSearch.Fitting.Tests.Truth;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Season.Kernel;
using Xunit;

namespace DesignSearch.Fitting.Tests;

/// <summary>A log of the very plant that promised: it keeps its promise, and what is changed in it is found.</summary>
public sealed class PromiseTests
{
    private const int FirstDay = 40, Days = 20;

    [Fact]
    public void A_plant_as_it_was_promised_keeps_every_night()
    {
        var kept = Of(_ => 0, _ => 1);
        Assert.True(kept.Nights.Count >= Days - 1, $"{kept.Nights.Count}");
        Assert.All(kept.Nights, n => Assert.True(n.IsKept, FormattableString.Invariant($"{n.Evening}: {n.CameC} for {n.PromisedC}")));
        Assert.All(kept.Nights, n => Assert.InRange(n.CameC - n.PromisedC, -1, 1));
        Assert.Null(kept.ChangedFrom);
        Assert.Null(kept.Wanting);
        var heater = Assert.Single(kept.Systems);
        Assert.InRange(heater.CameKwh / heater.PromisedKwh, 0.85, 1.15);
    }

    [Fact]
    public void The_first_night_of_a_house_that_became_colder_is_named()
    {
        var colder = Of(day => day >= 9 ? -3 : 0, _ => 1);
        Assert.Equal(Start.AddDays(9).Date, colder.ChangedFrom!.Value.Date, TimeSpan.FromDays(1));
        Assert.InRange(colder.ChangeK, -3.6, -2.4);
        Assert.Contains(colder.Nights, n => !n.IsKept);
    }

    [Fact]
    public void A_heater_that_gives_half_of_what_was_promised_is_wanting() => Assert.NotNull(Of(_ => 0, _ => 0.5).Wanting);

    [Fact]
    public void A_column_of_heat_that_names_no_system_is_told()
    {
        var promised = Of(_ => 0, _ => 1, "heat_from_moon_w", "heat_from_warm_wall_w");
        Assert.Contains(promised.Remarks, r => r.Contains("heat_from_moon_w", StringComparison.Ordinal));
        Assert.Contains(promised.Remarks, r => r.Contains("heat_from_warm_wall_w", StringComparison.Ordinal));
        Assert.DoesNotContain(promised.Systems, s => !double.IsFinite(s.PromisedKwh));
    }

    [Fact]
    public void Of_a_tank_that_does_not_stand_there_nothing_is_promised_and_nothing_is_short()
    {
        var promised = Of(_ => 0, _ => 1, "heat_from_tank_w");
        var tank = promised.Systems.Single(s => s.Name == "heat_from_tank_w");
        // No tank stands in the layout: nothing was promised of it, and nothing is wanting.
        Assert.Equal(0, tank.PromisedKwh);
        Assert.Null(promised.Wanting);
    }

    private static readonly Lazy<List<HourRow>> Rows = new(() =>
    {
        var (scenario, layout) = Plant;
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario, asRecorded: false));
        var rows = new List<HourRow>();
        SeasonSimulator.Run(assessor.Winters.Winters[0].Forcing, new LayoutCase(LayoutBuilder.Build(scenario, layout).Installation, null), rows.Add);
        return rows.GetRange(assessor.Winters.Winters[0].Winter.WarmUpHours + 24 * FirstDay, 24 * Days);
    });

    private static DateTime Start => Rows.Value[0].LocalTime;

    private static (Scenario Scenario, Layout Layout) Plant => (Houses.All[1], Built.Value);

    private static readonly Lazy<Layout> Built = new(() =>
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, "format = 1\n[choices]\nlining = \"bubble-lining-large\"\nheater = \"fan-heater-2kw\"\nheater_set_c = 5\n");
            var faults = new FaultList();
            var layout = LayoutFileReader.Read(path, path, Houses.All[1], faults);
            faults.ThrowIfAny();
            return layout;
        }
        finally
        {
            File.Delete(path);
        }
    });

    private static Promised Of(Func<int, double> offK, Func<int, double> share, params string[] systems)
    {
        var text = new StringBuilder($"time,inside_c,outside_c,heater_w{string.Concat(systems.Select(s => "," + s))}\n");
        for (var i = 0; i < Rows.Value.Count; i++)
        {
            var row = Rows.Value[i];
            text.Append(CultureInfo.InvariantCulture, $"{row.LocalTime:yyyy-MM-dd HH:mm},{row.AirMeanC + offK(i / 24):0.00},{row.OutsideC:0.00},{share(i / 24) * row.HeaterW:0}{string.Concat(systems.Select(_ => ",50"))}\n");
        }

        var folder = Directory.CreateTempSubdirectory("promise").FullName;
        try
        {
            var path = Path.Combine(folder, "log.csv");
            File.WriteAllText(path, text.ToString());
            var (scenario, layout) = Plant;
            return Promised.Of(scenario, layout, LogReader.Read([path], scenario.Place, new()));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
