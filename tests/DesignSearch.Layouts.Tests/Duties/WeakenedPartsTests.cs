using System.Globalization;
using System.Reflection;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.OffGrid;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Every rating of the catalogue is asked: weakened to a tenth, some layout that used the part lacks it, or fails a check that names it.</summary>
public sealed class WeakenedPartsTests
{
    private const int Draws = 200;
    private const double LowestC = -12;

    private const string Size = "a size or a weight: sums, room and floor follow it";
    private const string Heat = "how well it keeps, takes or gives heat: the season is reckoned with it";
    private const string Draw = "what it draws: supply, cables and fuses follow it";
    private const string Demand = "what it asks of others, so that less asks less";
    private const string Ceiling = "the tank's ceiling follows the weakest of all, 5 K below it";

    // Columns that rate nothing, each with its reason. Those of one record stand in one line.
    private static readonly (string Kind, string Reason, string[] Columns)[] NoRating =
    [
        ("NightCover", Heat, ["ResistanceM2KPerW", "EdgeLeak"]),
        ("Lining", Heat, ["ResistanceM2KPerW", "Transmittance"]),
        ("Sealing", Heat, ["LeakageFactor"]),
        ("Sealing", "how far a set goes: more sets are bought", ["FloorUpToM2"]),
        ("PerimeterBoard", "how the trench is dug: told among the settings", ["ThicknessMm", "DepthM"]),
        ("PerimeterBoard", Heat, ["EdgeLossWPerMK"]),
        ("WindBreak", Heat, ["WindFactor"]),
        ("Barrel", Size, ["VolumeL", "DiameterM", "HeightM", "EmptyKg"]),
        ("Heater", Heat, ["Watts", "BandK", "RadiantShare"]),
        ("Bench", Heat, ["WattsPerM2", "FleeceWPerM2K"]),
        ("Bench", Draw, ["Volts"]),
        ("Collector", Size, ["AreaM2", "WidthM", "HeightM", "WaterL", "WeightKg"]),
        ("Collector", Heat, ["Eta0Beam", "A1WPerM2K", "A2WPerM2K2", "WindLossJPerM3K", "IncidenceB0", "DiffuseModifier", "CapacityJPerM2K"]),
        ("Collector", Demand, ["StagnationC", "DropKPaAtMaxFlow"]),
        ("Collector", "the flow that is wanted is never above it", ["MaxFlowLPerMin"]),
        ("CollectorMount", Demand, ["BearingFriction", "BearingDiameterMm", "ImbalanceM", "WeightKg", "ClearanceM", "FeetApartM"]),
        ("Drive", "a gear that passes on less locks the better", ["GearEfficiency"]),
        ("Drive", Draw, ["SpeedDegPerS", "Watts", "StartCurrentA"]),
        ("Holdfast", "a shorter screw is not taken where frost goes deeper: bolts are", ["LengthM"]),
        ("Holdfast", Draw, ["Volts", "Watts"]),
        ("Tank", Size, ["VolumeL", "SurfaceM2", "FootprintM2", "HeightM", "EmptyKg"]),
        ("Tank", Heat, ["LossWPerK"]),
        ("Tank", Ceiling, ["MaxTemperatureC"]),
        ("TankJacket", Heat, ["ThicknessMm", "ConductivityWPerMK"]),
        ("TankJacket", Ceiling, ["MaxTemperatureC"]),
        ("Pipe", Size, ["OuterMm", "WallCapacityJPerMK"]),
        ("Pipe", Demand, ["RoughnessUm"]),
        ("PipeInsulation", "a smaller least pipe still fits", ["InnerFromMm"]),
        ("PipeInsulation", Heat, ["ThicknessMm", "ConductivityWPerMK"]),
        ("Pump", Draw, ["Watts"]),
        ("Pump", Demand, ["InletHeadM"]),
        ("HeatRelease", Heat, ["WPerK", "FlowLPerMin", "RadiantShare"]),
        ("HeatRelease", Demand, ["DropKPaAtFlow"]),
        ("HeatRelease", Draw, ["FanWatts"]),
        ("HeatRelease", Ceiling, ["MaxTemperatureC"]),
        ("FreezeProtection", Heat, ["ExchangerEffectiveness", "FluidJPerKgK"]),
        ("FreezeProtection", Size, ["FluidLPerM2", "VesselAboveTankM"]),
        ("FreezeProtection", Demand, ["MinFallPercent", "MinBoreMm"]),
        ("FreezeProtection", Draw, ["Watts"]),
        ("SolarController", Draw, ["Watts"]),
        ("SolarController", "a lower beginning of its range takes nothing away", ["LockOutFromC"]),
        ("Antifreeze", "held against what it promises to freeze at within its row", ["GlycolPercent"]),
        ("ReliefValve", "one that opens earlier asks for a bigger vessel", ["OpensAtBar"]),
        ("ExpansionVessel", "of smaller ones more are bought", ["Litres"]),
        ("CompostMix", Heat, ["DryKgPerM3", "DegradableShare", "RatePerDay", "HeatJPerKg", "Moisture"]),
        ("CompostCoil", Size, ["BoreMm"]),
        ("CompostCoil", Heat, ["WPerMK"]),
        ("CompostWrap", Heat, ["ResistanceM2KPerW"]),
        ("HeatPump", Heat, ["HeatAt12W", "CopAt12", "HeatAt7W", "CopAt7", "HeatAt2W", "CopAt2", "HeatAtMinus7W", "CopAtMinus7", "HeatAtMinus15W", "CopAtMinus15", "LeastW", "CopGainAtLeast", "CyclingLoss", "LowestSetPointC"]),
        ("HeatPump", "told, not refused: the season stops it there", ["LeastOutdoorC"]),
        ("HeatPump", Draw, ["IdleW", "MostA"]),
        ("EarthPipe", Size, ["BoreMm", "OuterMm"]),
        ("EarthPipe", Heat, ["WallWPerMK", "FrictionFactor", "FilmFactor"]),
        ("StoreFan", Heat, ["FlowAtNoHeadM3PerH", "HeadAtNoFlowPa"]),
        ("StoreFan", Draw, ["Watts"]),
        ("SunPanel", Demand, ["OpenV", "OpenLossPerK", "ShortA", "AreaM2"]),
        ("ChargeController", Draw, ["OwnW"]),
        ("Battery", Demand, ["ShortA"]),
        ("Battery", "of smaller ones more are bought, in series", ["Volts"]),
        ("Battery", "of weaker ones more are bought, side by side", ["MostA"]),
        ("Cable", "the standard knows only certain ones; resistance and rating follow it", ["SectionMm2", "ConductorClass"]),
        ("SmallPart", Draw, ["Watts"]),
    ];

    private static readonly Type[] Number = [typeof(double), typeof(double?), typeof(int), typeof(int?)];

    private static readonly Scenario Wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));

    // Panels, batteries and what belongs to them are used where there are no mains.
    private static readonly Scenario Lonely = ReadLonely();
    private static readonly HashSet<Type> OffMains =
        [typeof(SunPanel), typeof(PanelBracket), typeof(ChargeController), typeof(Battery), typeof(BatteryFuse)];

    [Fact]
    public void Every_rating_is_asked_by_a_check_that_names_the_part()
    {
        var known = NoRating.SelectMany(n => n.Columns.Select(c => $"{n.Kind}.{c}")).ToHashSet(StringComparer.Ordinal);
        var (unasked, ratings, all) = (new List<string>(), 0, new HashSet<string>(StringComparer.Ordinal));
        foreach (var kind in Wide.Catalogue.All.GroupBy(p => p.GetType()))
        {
            foreach (var column in kind.Key.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(c => c.CanWrite && Number.Contains(c.PropertyType)))
            {
                var name = $"{kind.Key.Name}.{column.Name}";
                all.Add(name);
                if (known.Contains(name))
                    continue;
                ratings++;
                if (!Enumerable.Range(0, Draws).Any(seed => Fails(seed, kind.Key, column)))
                    unasked.Add(name);
            }
        }

        Assert.True(unasked.Count == 0, "Asked by no check that names the part:\n" + string.Join('\n', unasked));
        Assert.True(known.IsSubsetOf(all), "No such column any more:\n" + string.Join('\n', known.Except(all)));
        Assert.True(ratings > 25, ratings.ToString(CultureInfo.InvariantCulture));
    }

    private static Scenario ReadLonely()
    {
        using var house = new LonelyHouse();
        return house.Read();
    }

    private static bool Fails(int seed, Type kind, PropertyInfo column)
    {
        var place = OffMains.Contains(kind) ? Lonely : Wide;
        var sound = Built(place, seed);
        if (!sound.Parts.Any(p => p.Part.GetType() == kind))
            return false;
        var weak = place with { Catalogue = Catalogue.Of(place.Catalogue.All.Select(p => p.GetType() == kind ? Weaker((Part)p, column) : p)) };
        var before = Checks(place, sound).Where(c => !c.Passed).Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        var built = Built(weak, seed);
        bool Names(Check check) => built.Parts.Any(p => p.Part.GetType() == kind && check.Sentence.Contains(p.Part.Name, StringComparison.Ordinal));
        return Checks(weak, built).Any(c => !c.Passed && !before.Contains(c.Id) && (c.Id == PlantRules.Parts.Id || Names(c)));
    }

    private static BuiltLayout Built(Scenario scenario, int seed)
    {
        var random = new Random(seed);
        ChoiceValue Drawn(int i)
        {
            var levels = scenario.Choices[i].Levels;
            var value = levels[random.Next(levels.Count)];
            return value.Part is { } part && scenario.Catalogue.TryFind<IPart>(part.Id, out var own) ? ChoiceValue.Of(own) : value;
        }

        return LayoutBuilder.Build(scenario, Layout.Of([.. SystemList.All.Choices.All.Select((_, i) => Drawn(i))], scenario.Systems.Choices));
    }

    private static IReadOnlyList<Check> Checks(Scenario scenario, BuiltLayout built) => Checked.Of(scenario, built, 0, 0, LowestC, []);

    private static Part Weaker(Part part, PropertyInfo column)
    {
        var weak = part with { };
        if (column.GetValue(part) is { } value)
            column.SetValue(weak, value is int whole ? (object)(whole / 10) : (double)value / 10);
        return weak;
    }
}
