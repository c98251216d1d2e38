using DesignSearch.Climate.Winters;
using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>A source that the program does not have, whole in this file: an electrically charged pile of bricks under the floor. No file of the kernel knows it.</summary>
public sealed class ToySourceTests
{
    private static readonly Winter Winter = MadeWinter.Of(40, 10, meanC: -2);
    private static readonly WinterForcing Forcing = MadeWinter.Forcing(Winter, isCheapHour: h => h < 6);

    private static LayoutCase Case(Installation installation) => new(installation, installation.Collector.AreaM2 > 0 ? MadeWinter.Plane(Winter) : null);

    private static Outcome Run(Installation installation, Action<HourRow>? hourly = null) => SeasonSimulator.Run(Forcing, Case(installation), hourly);

    [Fact]
    public void Its_books_close_and_its_figures_reach_the_outcome()
    {
        var rows = new List<HourRow>();
        var (bare, bricks) = (Run(MadeLayout.Full), Run(MadeLayout.Full.With(new ToyNumbers(2e6, 300)), rows.Add));
        Assert.InRange(bricks.BalanceResidual, 0, 1e-9);
        Assert.All(bricks.Books.Stored, s => Assert.InRange(
            bricks.Books.Flows.Sum(f => (f.Flow.To == s.Store.Id ? f.Kwh : 0) - (f.Flow.From == s.Store.Id ? f.Kwh : 0)) - s.Kwh, -1e-9 * bricks.Books.ThroughputKwh, 1e-9 * bricks.Books.ThroughputKwh));
        Assert.True(bricks.FrostDegreeHoursKh < bare.FrostDegreeHoursKh);
        Assert.True(bricks.Books.Of(ToyFlows.ToFloor) > 1 && bricks.Books.Of(ToyFlows.Fan) > 1);
        Assert.Equal(bricks.Books.Of(ToyFlows.Charge), bricks.Books.Of(ToyFlows.Current), 9);
        Assert.Equal(bricks.Books.Of(ToyFlows.Current), bricks.ElectricKwh - bricks.PumpKwh - bricks.Books.Of(Heaters.HeaterFlows.Heater), 9);
        Assert.InRange(bricks.Of(ToyFlows.Hottest), 8, 200);
        Assert.True(double.IsNaN(bare.Of(ToyFlows.Hottest)));
        Assert.Equal(bricks.Of(ToyFlows.Hottest), rows.Skip(Winter.WarmUpHours).Max(r => r.More[ToyFlows.BrickC]));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(8)]
    public void It_has_the_same_bits_at_any_width_and_leaves_its_neighbours_theirs(int width)
    {
        var random = new Random(3);
        var cases = Enumerable.Range(0, 19).Select(i =>
        {
            var layout = TestLayout.Random(random);
            layout = i % 4 == 1 ? layout.With(CompostHeapTests.Heap(5, 40)) : layout;
            return Case(i % 3 > 0 ? layout : layout.With(new ToyNumbers(1e6 * (1 + i), 40 * i)));
        }).ToArray();
        var together = new Outcome[cases.Length];
        SeasonSimulator.Run(Forcing, cases, together, null, 300, width);
        for (var i = 0; i < cases.Length; i++)
            Assert.Equal(SeasonSimulator.Run(Forcing, cases[i]), together[i]);
    }

    [Fact]
    public void A_layout_has_one_of_a_kind_and_the_order_of_the_list_does_not_matter()
    {
        var (bricks, heap) = (new ToyNumbers(1e6, 100), CompostHeapTests.Heap(5, 40));
        Assert.Equal(MadeLayout.Bare with { Sources = [bricks, heap] }, MadeLayout.Bare with { Sources = [heap, bricks] });
        Assert.Equal(MadeLayout.Bare.With(heap), MadeLayout.Bare.With(bricks).With(heap).With(bricks with { PowerW = 0 }));
        Assert.Throws<ArgumentException>(() => MadeLayout.Bare with { Sources = [bricks, bricks with { PowerW = 5 }] });
    }

    [Fact]
    public void Half_the_step_changes_little()
    {
        var layout = Case(MadeLayout.Full.With(new ToyNumbers(2e6, 300)));
        var (whole, half) = (SeasonSimulator.Run(Forcing, layout), SeasonSimulator.Run(Forcing, layout, null, 150));
        Assert.InRange(whole.FrostDegreeHoursKh - half.FrostDegreeHoursKh, -Math.Max(0.5, 0.01 * half.FrostDegreeHoursKh), Math.Max(0.5, 0.01 * half.FrostDegreeHoursKh));
    }

    private static class ToyFlows
    {
        public static readonly Store Bricks = new("toy-bricks", "bricks");
        public static readonly Flow Charge = new("toy-charge", Accounts.Mains, Bricks.Id, "charging the bricks");
        public static readonly Flow ToFloor = new("toy-floor", Bricks.Id, Accounts.House, "from the bricks into the soil", "from the soil into the bricks");
        public static readonly Flow Fan = new("toy-fan", Bricks.Id, Accounts.House, "blown from the bricks into the house");
        public static readonly Use Current = new("toy-charge", "bricks", IsHeat: true);
        public static readonly Figure Hottest = new("toy-hottest", "hottest bricks", "°C");
        public static readonly HourColumn BrickC = new("toy_brick_c", "bricks", "°C");

        public static readonly SourceKind Kind = new("toy", 15)
        {
            Flows = [Charge, ToFloor, Fan],
            Uses = [Current],
            Stores = [Bricks],
            Figures = [Hottest],
            Columns = [BrickC],
            Offers = 1,
            Doors = DoorUse.Conductances,
        };
    }

    private sealed record ToyNumbers(double CapacityJPerK, double PowerW) : SourceNumbers
    {
        public override bool IsPresent => PowerW > 0;

        internal override SourceKind Kind => ToyFlows.Kind;

        internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new BlockRunner<ToyBlock<T>, T>(Kind, start, batches);
    }

    private struct ToyTerms<TNumber>
        where TNumber : unmanaged
    {
        public TNumber Store, PowerW, ToSoil, ToAir;
    }

    private struct ToyBlock<T> : ISourceBlock<ToyBlock<T>, T>
        where T : unmanaged, ILane<T>
    {
        private ToyTerms<T> terms;
        private T brick, before, power, hottest, sumCharge, sumFloor, sumFan;

        public static ToyBlock<T> Make(in SourceStart start, int first)
        {
            Span<ToyTerms<double>> lanes = stackalloc ToyTerms<double>[Pack.Widest];
            for (var i = 0; i < T.Width; i++)
                lanes[i] = start.Find<ToyNumbers>(first + i) is { } n ? new() { Store = n.CapacityJPerK / start.StepSeconds, PowerW = n.PowerW, ToSoil = 8, ToAir = 15 } : new() { Store = 1 };
            return new() { terms = Lift.Of<ToyTerms<double>, ToyTerms<T>, T>(lanes), brick = T.Of(10) };
        }

        public void Begin() => hottest = T.Of(-1e9);

        public void Hour(in HourForcing f)
        {
            power = f.IsCheap ? terms.PowerW * T.Of(f.Power) : T.Of(0);
            sumCharge = sumFloor = sumFan = T.Of(0);
        }

        public void Prepare(ref HouseBlock<T> house)
        {
            before = brick;
            house.Doors.Soil1.Add(terms.ToSoil, terms.ToSoil * brick);
        }

        public readonly void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
        {
            ref var fan = ref offers[0];
            fan.SetC = T.Of(4.5);
            fan.Conductance = T.IfGreater(brick, T.Of(6), terms.ToAir, T.Of(0));
            fan.Source = fan.Conductance * brick;
        }

        public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
        {
            var (floor, fan) = (terms.ToSoil * (before - house.Soil1), offers[0].Given(house.Air));
            brick += (power - floor - fan) / terms.Store;
            sumCharge += power;
            sumFloor += floor;
            sumFan += fan;
        }

        public void Book(ref FlowBook<T> book)
        {
            book.Heat(ToyFlows.Charge, sumCharge);
            book.Heat(ToyFlows.ToFloor, sumFloor);
            book.Heat(ToyFlows.Fan, sumFan);
            book.Electricity(ToyFlows.Current, sumCharge);
            hottest = T.Max(hottest, brick);
        }

        public readonly void Stored(ref LaneWriter<Store, T> stores) => stores.Put(ToyFlows.Bricks, terms.Store * brick);

        public readonly void Tell(ref LaneWriter<Figure, T> figures) => figures.Put(ToyFlows.Hottest, hottest);

        public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps) => columns.Put(ToyFlows.BrickC, brick);

        public readonly T PlantsMean(in T house, double steps) => house;

        public readonly T PlantsLowest(in T house) => house;
    }
}
