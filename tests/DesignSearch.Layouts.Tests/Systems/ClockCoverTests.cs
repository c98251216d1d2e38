using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Season.House;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>A night cover whose motors go by a timer: a row of the builder's own catalogue.</summary>
public sealed class ClockCoverTests
{
    private const string Row = "clock-screen,\"Night cover of screen, drawn by motor on a timer\",m2,15.00,10.00,22.00,,,8,0.45,0.28,0.08,clock,Invented for a test.";

    [Fact]
    public void A_timer_stands_in_the_place_of_the_light_sensor()
    {
        using var small = new SmallScenario();
        var file = Path.Combine(small.Folder, "scenario.toml");
        var starter = Repository.At("catalogs").Replace('\\', '/') + "/starter\"";
        var text = File.ReadAllText(file);
        Assert.Contains(starter, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(starter, starter + ", \"own\"", StringComparison.Ordinal));
        var own = Directory.CreateDirectory(Path.Combine(small.Folder, "own")).FullName;
        var head = File.ReadLines(Repository.At("catalogs", "starter", "night-covers.csv")).First(l => l.StartsWith("id,", StringComparison.Ordinal));
        File.WriteAllText(Path.Combine(own, "night-covers.csv"), head + "\n" + Row + "\n");
        var scenario = small.Read();
        var (sensor, clock) = (SmallScenario.Of(scenario, ("night_cover", "aluminised-motor")), SmallScenario.Of(scenario, ("night_cover", "clock-screen")));
        var (bySensor, byClock) = (LayoutBuilder.Build(scenario, sensor), LayoutBuilder.Build(scenario, clock));
        Assert.Empty(byClock.Missing);
        Assert.Contains(byClock.Parts, p => p.Part.Id == "timer-24v");
        Assert.DoesNotContain(bySensor.Parts, p => p.Part.Id == "timer-24v");
        Assert.Equal(CoverDrawing.Clock, byClock.Installation.House.NightCoverDrawnBy);
        var scheme = SchemeDrawing.Of(byClock);
        Assert.Empty(scheme.Faults(byClock.Parts));
        Assert.Contains(scheme.Components, c => c.Name == "timer of the night cover");

        var judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        Assert.All(judge.Of(clock).Wires.Where(w => w.Device.StartsWith("cover motor", StringComparison.Ordinal)),
            w => Assert.Equal("timer through a reversing interlock", w.SwitchedBy));
        var set = byClock.Settings(scenario).Single(t => t.What == "Timer of the night cover").Value;
        Assert.StartsWith("November: closes ", set, StringComparison.Ordinal);
        Assert.EndsWith("(standard time)", set, StringComparison.Ordinal);
        // Set for the month's middle it is early or late by minutes: hardly another season than the sensor's.
        var (a, b) = (judge.Of(sensor).FrostDegreeHoursKh, judge.Of(clock).FrostDegreeHoursKh);
        Assert.NotEqual(a, b);
        Assert.InRange(b / a, 0.97, 1.03);
    }
}
