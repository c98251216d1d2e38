using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;

namespace DesignSearch.Fitting.Tests.Truth;

/// <summary>A heater on a plug-in thermostat that a hand sets every evening: full power or none, one kelvin between on and off. It writes down every step.</summary>
/// <param name="Watts">What it takes while it runs.</param>
/// <param name="SetC">Middle of its band by the hour; NaN where it rests.</param>
/// <param name="AirC">Receives the air at the end of every step.</param>
/// <param name="HeatW">Receives its heat of every step.</param>
internal sealed record HandSet(double Watts, double[] SetC, List<double> AirC, List<double> HeatW) : SourceNumbers
{
    private static readonly SourceKind Hand = new("hand-set", 90) { Flows = [new("hand-set", Accounts.Mains, Accounts.House, "heat set by hand")] };

    public override bool IsPresent => true;

    internal override SourceKind Kind => Hand;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new Runner<T>(this);

    private sealed class Runner<T>(HandSet set) : SourceRunner<T>(Hand)
        where T : unmanaged, ILane<T>
    {
        private int hour = -1;
        private bool on;
        private double sum;

        public override void Begin(int batch)
        {
        }

        public override void Hour(in HourForcing f) => (hour, sum) = (hour + 1, 0);

        public override void Prepare(Span<Batch<T>> batches)
        {
        }

        public override void Offer(Span<Batch<T>> batches, in OfferTable<T> offers)
        {
            var air = Pack.At(batches[0].House.Air, 0);
            on = !double.IsNaN(set.SetC[hour]) && (on ? air < set.SetC[hour] + 0.5 : air < set.SetC[hour] - 0.5);
            sum += on ? set.Watts : 0;
            batches[0].House.Add(T.Of(0), T.Of(on ? set.Watts : 0));
        }

        public override void Settle(Span<Batch<T>> batches, in OfferTable<T> offers)
        {
            set.AirC.Add(Pack.At(batches[0].House.Air, 0));
            set.HeatW.Add(on ? set.Watts : 0);
        }

        public override void Book(int batch, ref FlowBook<T> book) => book.Heat(Hand.Flows[0], T.Of(sum));

        public override void Stored(int batch, Span<T> stores)
        {
        }

        public override void Tell(int batch, Span<T> figures)
        {
        }

        public override void Row(int batch, Span<T> columns, double steps)
        {
        }

        public override T PlantsMean(int batch, in T house, double steps) => house;

        public override T PlantsLowest(int batch, in T house) => house;

        public override void Dispose()
        {
        }
    }
}
