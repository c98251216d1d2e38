using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.Sources;

/// <summary>
/// Gives every lane heat by the hour, holds its air where that is wanted, and writes down what the air was. It reads and writes arrays, so it is no block of lanes;
/// its kind has two flows, the heat and what holds the air.
/// </summary>
internal sealed class ArrayRunner<T> : SourceRunner<T>
    where T : unmanaged, ILane<T>
{
    // Far more than any house loses, so that the air follows within a hundredth of a kelvin; little enough that no digit is lost [W/K].
    private const double HoldWPerK = 1e5;

    private readonly (double[] HeatW, double[] HeldC, double[] AirC)?[] lanes;
    private readonly Flow heatFlow, holdFlow;
    private readonly T[] given, hold, held, sumAir, sumHold;
    private readonly double steps;
    private int hour = -1;

    /// <summary>Runs arrays.</summary>
    /// <param name="kind">With two flows.</param>
    /// <param name="lanes">Of each lane heat [W], air that is held [°C] or NaN, and room for the air that was, an entry an hour; null for a lane without.</param>
    /// <param name="stepSeconds">Step [s].</param>
    public ArrayRunner(SourceKind kind, (double[] HeatW, double[] HeldC, double[] AirC)?[] lanes, double stepSeconds)
        : base(kind)
    {
        (this.lanes, heatFlow, holdFlow) = (lanes, kind.Flows[0], kind.Flows[1]);
        var batches = lanes.Length / T.Width;
        (given, hold, held, sumAir, sumHold) = (new T[batches], new T[batches], new T[batches], new T[batches], new T[batches]);
        steps = Math.Round(3600 / stepSeconds);
    }

    public override void Begin(int batch)
    {
        // What was written down stays.
    }

    public override void Hour(in HourForcing f)
    {
        hour++;
        Span<double> watts = stackalloc double[Pack.Widest], holds = stackalloc double[Pack.Widest], celsius = stackalloc double[Pack.Widest];
        for (var b = 0; b < given.Length; b++)
        {
            for (var i = 0; i < T.Width; i++)
            {
                var log = lanes[b * T.Width + i];
                var heldC = log?.HeldC[hour] ?? double.NaN;
                (watts[i], holds[i], celsius[i]) = (log?.HeatW[hour] ?? 0, double.IsNaN(heldC) ? 0 : HoldWPerK, double.IsNaN(heldC) ? 0 : heldC);
            }

            (given[b], hold[b], held[b]) = (T.Load(watts), T.Load(holds), T.Load(celsius));
            sumAir[b] = sumHold[b] = T.Of(0);
        }
    }

    public override void Prepare(Span<Batch<T>> batches)
    {
        // It meets the air alone.
    }

    public override void Offer(Span<Batch<T>> batches, in OfferTable<T> offers)
    {
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Add(hold[b], given[b] + hold[b] * held[b]);
    }

    public override void Settle(Span<Batch<T>> batches, in OfferTable<T> offers)
    {
        for (var b = 0; b < batches.Length; b++)
        {
            sumAir[b] += batches[b].House.Air;
            sumHold[b] += hold[b] * (held[b] - batches[b].House.Air);
        }
    }

    public override void Book(int batch, ref FlowBook<T> book)
    {
        book.Heat(heatFlow, given[batch] * T.Of(steps));
        book.HeatBothWays(holdFlow, sumHold[batch]);
        for (var i = T.Width - 1; i >= 0; i--)
        {
            // Spare lanes carry the last layout again: all of them write the same.
            if (lanes[batch * T.Width + i] is { } log)
                log.AirC[hour] = Pack.At(sumAir[batch], i) / steps;
        }
    }

    public override void Stored(int batch, Span<T> stores)
    {
        // It stores nothing.
    }

    public override void Tell(int batch, Span<T> figures)
    {
        // What it gave stands in the books.
    }

    public override void Row(int batch, Span<T> columns, double steps)
    {
        // It has no column of its own.
    }

    public override T PlantsMean(int batch, in T house, double steps) => house;

    public override T PlantsLowest(int batch, in T house) => house;

    public override void Dispose()
    {
        // Nothing that is not managed.
    }
}
