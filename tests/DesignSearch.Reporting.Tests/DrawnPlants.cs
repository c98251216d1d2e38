using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Testing;

namespace DesignSearch.Reporting.Tests;

/// <summary>Random plants of random sites, drawn without being simulated: everything of the catalogue may be in them.</summary>
internal static class DrawnPlants
{
    private const int Draws = 1200;

    private static readonly Scenario Wide = Read();

    /// <summary>Some hundred plants of which nothing is missing, each with its seed.</summary>
    public static IReadOnlyList<(int Seed, BuiltLayout Built, JudgedLayout Layout)> All { get; } =
        [.. Enumerable.Range(0, Draws).Select(s => (s, Of(s))).Where(p => p.Item2 is not null).Select(p => (p.s, p.Item2!.Value.Built, p.Item2!.Value.Layout))];

    /// <summary>One plant; null where the catalogue could not give all of it.</summary>
    private static (BuiltLayout Built, JudgedLayout Layout)? Of(int seed)
    {
        var random = new Random(seed);
        var scenario = Placed(random);
        // Stands of every kind, not only those that the sample asks for.
        var mounts = scenario.Catalogue.All.OfType<DesignSearch.Parts.Solar.CollectorMount>().ToList();
        var levels = scenario.Systems.Choices.All.Select((choice, i) => choice.Key switch
        {
            "mount" => ChoiceValue.Of(mounts[random.Next(mounts.Count)]),
            "azimuth_deg" => ChoiceValue.Of(((scenario.Place.LatitudeDeg > 0 ? 180 : 0) + (15 * random.Next(-4, 5)) + 360) % 360),
            "tilt_deg" => ChoiceValue.Of(15 * random.Next(2, 7)),
            _ => scenario.Choices[i].Levels[random.Next(scenario.Choices[i].Levels.Count)],
        });
        return Of(scenario, Layout.Of([.. levels], scenario.Systems.Choices));
    }

    private static (BuiltLayout Built, JudgedLayout Layout)? Of(Scenario scenario, Layout chosen)
    {
        var built = LayoutBuilder.Build(scenario, chosen);
        if (built.Missing.Count > 0)
            return null;
        var bill = built.Parts.Select(p => new BillLine(
            p.Part.Id, p.Part.Name, p.Quantity, PartUnits.Word(p.Part.Unit), 1, 0, p.Quantity, p.Purpose.System, p.Purpose.Why, p.Purpose.Where));
        return (built, InventedLayouts.Bare with
        {
            Rank = 1,
            Bill = [.. bill],
            Wires = WireWriter.Of(built),
            Scheme = SchemeDrawing.Of(built),
            Site = SitePlan.Of(built, scenario),
            Frame = built.Systems.Select(s => s.Frame(built.Parts)).FirstOrDefault(f => f is not null),
        });
    }

    // Half of them south of the equator, some without mains; houses, pipes and cables of many lengths.
    private static Scenario Placed(Random random)
    {
        double Between(double least, double most) => Math.Round(least + (random.NextDouble() * (most - least)), 1);
        var eaves = Between(1.5, 2.2);
        return Wide with
        {
            Place = Wide.Place with { LatitudeDeg = random.Next(2) == 0 ? 46.3 : -46.3 },
            Site = Wide.Site with
            {
                PipeRunM = Between(2, 30),
                CollectorAboveTankM = Between(-1.5, 1.9),
                MainsCableM = Between(5, 120),
                HeapPipeM = Between(1, 25),
                HasNoMains = random.Next(5) == 0,
                FrostDepthM = random.Next(2) == 0 ? null : Between(0.4, 1.3),
            },
            Greenhouse = Shaped(
                Wide.Greenhouse with
                {
                    LengthM = Between(4.5, 12),
                    WidthM = Between(2.5, 6),
                    EavesM = eaves,
                    RidgeM = eaves + Between(0.5, 1.5),
                    RidgeAzimuthDeg = random.Next(360),
                },
                random.Next(6)),
        };
    }

    // Some of them lean on a wall, some are hoops, some stand on a wall or half in the ground.
    private static Greenhouse Shaped(Greenhouse house, int shape) => shape switch
    {
        0 => house with
        {
            Shape = HouseShape.LeanTo,
            BackWall = new((house.RidgeAzimuthDeg + 270) % 360, house.RidgeM + 2, 2.1, 390, BehindWall.HeatedRoom, 20),
        },
        1 => house with { Shape = HouseShape.Tunnel, EavesM = Math.Max(0, house.RidgeM - (house.WidthM / 2)) },
        2 => house with { BaseWall = new(0.8, 2.1, 390), FloorBelowM = 0.5 },
        _ => house,
    };

    private static Scenario Read()
    {
        using var folder = new ScratchFolder();
        var text = File.ReadAllLines(Repository.At("runs", "frost-hollow", "scenario.toml"))
            .Where(l => !l.StartsWith("collector = [", StringComparison.Ordinal))
            .Select(l => l.Replace("# bench_enough_m2", "bench_enough_m2", StringComparison.Ordinal).Replace("catalogs = [\"starter\", \"second-hand-corner\"]", $"catalogs = [\"{Repository.At("catalogs", "starter").Replace('\\', '/')}\", \"{Repository.At("catalogs", "second-hand-corner").Replace('\\', '/')}\"]", StringComparison.Ordinal));
        File.WriteAllLines(folder.At("scenario.toml"), text);
        return ScenarioReader.Read(folder.Path);
    }
}
