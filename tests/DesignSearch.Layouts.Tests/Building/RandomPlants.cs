using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Solar;
using DesignSearch.Testing;

namespace DesignSearch.Layouts.Tests;

/// <summary>Random layouts in random houses with mains, worked out but not simulated: everything of the catalogue may be in them, and some lack what there is not.</summary>
internal static class RandomPlants
{
    /// <summary>So many of them, each with its scenario.</summary>
    public static IEnumerable<(Scenario Scenario, BuiltLayout Built)> Of(int count)
    {
        var wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));
        var random = new Random(40_001);
        return Drawn(count, random, () => Placed(wide, random));
    }

    /// <summary>So many in a house without mains, each at a site of its own.</summary>
    public static IEnumerable<(Scenario Scenario, BuiltLayout Built)> Lonely(Scenario house, int count)
    {
        var random = new Random(40_002);
        return Drawn(count, random, () => Placed(house, random));
    }

    /// <summary>So many of all that can be built where every sixth part is not to be had, at another price level, with mains at the house or a limit of its current, in wind over a terrain.</summary>
    public static IEnumerable<(Scenario Scenario, BuiltLayout Built)> Lacking(Scenario wide, int count)
    {
        var random = new Random(40_003);
        return Drawn(count, random, () =>
        {
            var placed = Placed(wide, random);
            return placed with
            {
                Catalogue = Catalogue.Of([.. placed.Catalogue.All.Where(_ => random.Next(6) > 0)]),
                Money = placed.Money with { Prices = (PriceLevel)random.Next(4), LicensedRatePerHour = random.Next(2) == 0 ? 55.5m : null, BuildHours = 30 },
                Greenhouse = placed.Greenhouse with { CoverLayers = 1 + random.Next(2) },
                Site = placed.Site with
                {
                    MainsAtGreenhouse = random.Next(2) == 0,
                    MainsLimitA = random.Next(2) == 0 ? 5 : null,
                    FloorBearsKgPerM2 = 900,
                    AnchorHoldsN = random.Next(2) == 0 ? 1800 : null,
                    Terrain = random.Next(2) == 0 ? WindTerrain.Suburb : null,
                    DesignWindMPerS = 20 + random.Next(20),
                    WorkingWindMPerS = 6 + random.Next(9),
                    MainsLoopOhm = 0.8,
                },
            };
        });
    }

    private static IEnumerable<(Scenario Scenario, BuiltLayout Built)> Drawn(int count, Random random, Func<Scenario> place)
    {
        for (var i = 0; i < count; i++)
        {
            var scenario = place();
            var mounts = scenario.Offered.All.OfType<CollectorMount>().ToList();
            var levels = scenario.Systems.Choices.All.Select((choice, at) => choice.Key switch
            {
                "mount" => ChoiceValue.Of(mounts[random.Next(mounts.Count)]),
                "azimuth_deg" => ChoiceValue.Of(((scenario.Place.LatitudeDeg > 0 ? 180 : 0) + (15 * random.Next(-4, 5)) + 360) % 360),
                "tilt_deg" => ChoiceValue.Of(15 * random.Next(2, 7)),
                _ => scenario.Choices[at].Levels[random.Next(scenario.Choices[at].Levels.Count)],
            });
            yield return (scenario, LayoutBuilder.Build(scenario, Layout.Of([.. levels], scenario.Systems.Choices)));
        }
    }

    private static Scenario Placed(Scenario wide, Random random)
    {
        double Between(double least, double most) => Math.Round(least + (random.NextDouble() * (most - least)), 1);
        var eaves = Between(1.5, 2.2);
        return wide with
        {
            Place = wide.Place with { LatitudeDeg = random.Next(2) == 0 ? 46.3 : -46.3 },
            Site = wide.Site with
            {
                PipeRunM = Between(2, 30),
                CollectorAboveTankM = Between(-1.5, 1.9),
                MainsCableM = Between(5, 120),
                HeapPipeM = Between(1, 25),
                FrostDepthM = random.Next(2) == 0 ? null : Between(0.4, 1.3),
            },
            Greenhouse = wide.Greenhouse with
            {
                LengthM = Between(4.5, 12),
                WidthM = Between(2.5, 6),
                EavesM = eaves,
                RidgeM = eaves + Between(0.5, 1.5),
                RidgeAzimuthDeg = random.Next(360),
            },
        };
    }
}
