using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>A plant is drawn from its bill: every line of the bill is drawn, nothing else is, and every terminal is joined.</summary>
public sealed class SchemeTests
{
    private const int Draws = 1000;

    private static readonly Scenario Wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));

    [Fact]
    public void Every_line_of_the_bill_is_drawn_and_every_terminal_is_joined()
    {
        Hold(Wide, Draws);
    }

    [Fact]
    public void Without_mains_too()
    {
        using var house = new LonelyHouse();
        var scenario = house.Read();
        Hold(scenario, Draws);
        var scheme = SchemeDrawing.Of(LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario)));
        Assert.All(new[] { "photovoltaic panels", "charge controller", "battery", "fuse at the battery", "battery guard" },
            name => Assert.Contains(scheme.Components, c => c.Name == name));
        Assert.DoesNotContain(scheme.Components, c => c.Spot == Spot.Dwelling);
    }

    private static void Hold(Scenario scenario, int draws)
    {
        var (sound, wet, turning) = (0, 0, 0);
        for (var seed = 0; seed < draws; seed++)
        {
            var built = LayoutBuilder.Build(scenario, Drawn(scenario, seed));
            if (built.Missing.Count > 0)
                continue;
            var scheme = SchemeDrawing.Of(built);
            Assert.True(!scheme.Faults(built.Parts).Any(), $"seed {seed}: {string.Join("; ", scheme.Faults(built.Parts))} of {string.Join(", ", built.Supply?.Lines.SelectMany(l => l.Circuits).Select(c => c.Device) ?? [])}");
            sound++;
            wet += scheme.Joints.Any(j => j.Medium == Medium.Water) ? 1 : 0;
            turning += scheme.Joints.Any(j => j.Medium == Medium.Shaft) ? 1 : 0;
        }

        Assert.True(sound > draws * 9 / 20 && wet > draws / 5 && turning > draws / 20, $"{sound} sound, {wet} with water, {turning} turning");
    }

    [Fact]
    public void What_is_not_drawn_not_bought_or_not_joined_is_a_fault()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario));
        var scheme = SchemeDrawing.Of(built);
        Assert.Empty(scheme.Faults(built.Parts));
        var pump = scheme.Components.First(c => c.PartId == "solar-pump-19w");
        Assert.NotEmpty((scheme with { Components = [.. scheme.Components.Where(c => c.Name != "air vent")] }).Faults(built.Parts));
        Assert.NotEmpty(scheme.Faults([.. built.Parts.Where(p => p.Part.Id != "solar-pump-19w")]));
        Assert.NotEmpty((scheme with { Joints = [.. scheme.Joints.Where(j => j.To != pump.Name || j.Medium != Medium.Current)] }).Faults(built.Parts));
        Assert.NotEmpty((scheme with { Components = [.. scheme.Components, pump] }).Faults(built.Parts));
        foreach (var (gone, fault) in new[] { ("vent-air-hot", "lets no air out"), ("valve-ball-20", "cannot be drained"), ("drain-back-simple", "freezes") })
        {
            var without = scheme with { Components = [.. scheme.Components.Select(c => c.PartId == gone ? c with { PartId = "" } : c)] };
            Assert.Contains(without.Faults(built.Parts), f => f.Contains(fault, StringComparison.Ordinal));
        }
    }

    private static Layout Drawn(Scenario scenario, int seed)
    {
        var random = new Random(seed);
        return Layout.Of([.. SystemList.All.Choices.All.Select((_, i) => scenario.Choices[i].Levels[random.Next(scenario.Choices[i].Levels.Count)])], scenario.Systems.Choices);
    }
}
