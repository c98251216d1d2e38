using DesignSearch.Files;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Reporting.Page;
using DesignSearch.Season;
using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>
/// A whole system that the program does not have, in this one file, invented: a pile of hot bricks in the house, charged by cheap current. It has a part with a file and a rule,
/// a choice, a kernel block with a store, flows, a use of current and an offer, a line on the bill, a circuit, a caution and words; and no file of src knows it.
/// </summary>
public sealed class ToySystemTests : IDisposable
{
    private const string Rows = """
        # Invented.
        id,name,unit,price,price_low,price_high,price_second_hand,life_years,labour_hours,watts,store_j_per_k,note
        pile-small,Small pile of hot bricks,piece,120.00,100.00,150.00,,20,3,600,900000,Stands on the floor of the house.
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("designsearch-toy-").FullName;

    [Fact]
    public void A_source_of_one_file_is_read_chosen_bought_wired_simulated_booked_and_shown()
    {
        var scenario = Read(Rows);
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var judge = new Judge(assessor);
        var bare = judge.Of(Layout.Bare(scenario.Systems.Choices));
        var toy = judge.Of(Layout.Bare(scenario.Systems.Choices).With(ToySystem.Pile, scenario.LevelsOf(ToySystem.Pile)[^1]));

        Assert.Equal("pile of hot bricks", toy.Title);
        Assert.Equal(120m, Assert.Single(toy.Bill, b => b.PartId == "pile-small").Total);
        Assert.Contains(toy.Wires, w => w.Device == "pile of hot bricks" && w.Volts == SupplyPlan.MainsVolts);
        Assert.Contains(toy.Cautions, c => c.Topic == "Hot bricks");
        Assert.All(toy.Winters, w => Assert.InRange(w.Outcome.BalanceResidual, 0, 1e-9));
        Assert.All(toy.Winters, w => Assert.True(w.Outcome.Books.Of(ToyBooks.Given) > 50 && w.Outcome.Books.Of(ToyBooks.Current) >= w.Outcome.Books.Of(ToyBooks.Given) - 1));
        Assert.True(toy.FrostDegreeHoursKh < bare.FrostDegreeHoursKh && toy.Running.ElectricityPerYear > 0);

        var page = ReportPage.Of(InventedRun.Of([toy]), Assert.Fail);
        Assert.Contains("charging the bricks", page, StringComparison.Ordinal);
        Assert.Contains("Small pile of hot bricks", page, StringComparison.Ordinal);
        Assert.Contains("hot bricks burn", page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Its_rows_are_held_to_its_own_rule()
    {
        var faults = Assert.Throws<InputException>(() => Read(Rows.Replace(",600,", ",0,", StringComparison.Ordinal))).Faults;
        Assert.Contains(faults, f => f.Expected.Contains("watts: more than 0 (part pile-small)", StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private Scenario Read(string rows)
    {
        File.WriteAllText(Path.Combine(folder, ToyPile.Definition.File), rows);
        var starter = Repository.At("catalogs", "starter").Replace('\\', '/');
        var text = File.ReadAllText(Repository.At("runs", "sample-finished", "scenario.toml")).Replace("catalogs = [", "catalogs = [\".\", ", StringComparison.Ordinal)
            .Replace("../../catalogs/starter", starter, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "scenario.toml"), text);
        // Before the supply, which brings current to all others.
        var systems = new SystemSet([.. SystemList.All.All.SkipLast(1), new ToySystem(), SystemList.All.All[^1]]);
        return ScenarioReader.Read(folder, systems: systems);
    }

    private sealed record ToyPile(PartInfo Info) : Part(Info)
    {
        public static PartKind Definition { get; } = new("toy-pile", "toy-piles.csv", Read);

        public override PartKind Kind => Definition;

        public override IEnumerable<RowRule> Rules => [new(Watts > 0, "watts", "more than 0")];

        public required double Watts { get; init; }

        public required double StoreJPerK { get; init; }

        private static ToyPile Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
        {
            Watts = cells.Number("watts", 0, 5000, "Power [W]"),
            StoreJPerK = cells.Number("store_j_per_k", 1e4, 1e7, "Heat capacity [J/K]"),
        };
    }

    private sealed class ToySystem : PlantSystem
    {
        public static PartChoice<ToyPile> Pile { get; } = new("toy_pile", "pile of hot bricks", ToyPile.Definition) { NamesTheLayout = true };

        public override IReadOnlyList<PartKind> Kinds => [ToyPile.Definition];

        public override IReadOnlyList<Choice> Choices => [Pile];

        public override DesignedSystem? Design(DesignTask task) => task.Layout.Get(Pile) is { } pile ? new DesignedToy(pile) : null;
    }

    private sealed class DesignedToy(ToyPile pile) : DesignedSystem
    {
        public override IEnumerable<string> Words => ["pile of hot bricks"];

        public override IEnumerable<Circuit> Circuits => [new("pile of hot bricks", SupplyPlan.MainsVolts, pile.Watts, 0, "timer of the cheap hours", "") { BringsLead = true }];

        public override IEnumerable<Caution> Cautions => [new("Hot bricks", "Hot bricks burn hands and film.")];

        public override Installation Install(Installation plant) => plant.With(new ToyNumbers(pile.StoreJPerK, pile.Watts));

        public override void List(Needs needs) => needs.Add(pile, 1, new("pile of hot bricks", "Keeps the night's current for the cold hours.", "on the floor"));
    }

    private static class ToyBooks
    {
        public static readonly Store Bricks = new("toy-pile", "bricks");
        public static readonly Flow Charge = new("toy-pile-charge", Accounts.Mains, Bricks.Id, "charging the bricks");
        public static readonly Flow Given = new("toy-pile-given", Bricks.Id, Accounts.House, "from the bricks into the house");
        public static readonly Use Current = new("toy-pile", "pile of hot bricks", IsHeat: true);
        public static readonly SourceKind Kind = new("toy-pile", 90) { Flows = [Charge, Given], Uses = [Current], Stores = [Bricks], Offers = 1 };
    }

    private sealed record ToyNumbers(double StoreJPerK, double PowerW) : SourceNumbers
    {
        public override bool IsPresent => PowerW > 0;

        internal override SourceKind Kind => ToyBooks.Kind;

        internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new BlockRunner<ToyBlock<T>, T>(Kind, start, batches);
    }

    private struct ToyTerms<TNumber>
        where TNumber : unmanaged
    {
        public TNumber Store, PowerW, ToAir;
    }

    private struct ToyBlock<T> : ISourceBlock<ToyBlock<T>, T>
        where T : unmanaged, ILane<T>
    {
        private const double HottestC = 90;

        private ToyTerms<T> terms;
        private T brick, power, sumCharge, sumGiven;

        public static ToyBlock<T> Make(in SourceStart start, int first)
        {
            Span<ToyTerms<double>> lanes = stackalloc ToyTerms<double>[Pack.Widest];
            for (var i = 0; i < T.Width; i++)
                lanes[i] = start.Find<ToyNumbers>(first + i) is { } n ? new() { Store = n.StoreJPerK / start.StepSeconds, PowerW = n.PowerW, ToAir = 12 } : new() { Store = 1 };
            return new() { terms = Lift.Of<ToyTerms<double>, ToyTerms<T>, T>(lanes), brick = T.Of(10) };
        }

        public readonly void Begin()
        {
        }

        public void Hour(in HourForcing f)
        {
            power = T.IfGreater(T.Of(HottestC), brick, terms.PowerW * T.Of(f.Power), T.Of(0));
            sumCharge = sumGiven = T.Of(0);
        }

        public readonly void Prepare(ref HouseBlock<T> house)
        {
        }

        public readonly void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
        {
            ref var own = ref offers[0];
            own.SetC = T.Of(5);
            own.Conductance = T.IfGreater(brick, T.Of(6), terms.ToAir, T.Of(0));
            own.Source = own.Conductance * brick;
        }

        public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
        {
            var given = offers[0].Given(house.Air);
            brick += (power - given) / terms.Store;
            sumCharge += power;
            sumGiven += given;
        }

        public readonly void Book(ref FlowBook<T> book)
        {
            book.Heat(ToyBooks.Charge, sumCharge);
            book.Heat(ToyBooks.Given, sumGiven);
            book.Electricity(ToyBooks.Current, sumCharge);
        }

        public readonly void Stored(ref LaneWriter<Store, T> stores) => stores.Put(ToyBooks.Bricks, terms.Store * brick);

        public readonly void Tell(ref LaneWriter<Figure, T> figures)
        {
        }

        public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps)
        {
        }

        public readonly T PlantsMean(in T house, double steps) => house;

        public readonly T PlantsLowest(in T house) => house;
    }
}
