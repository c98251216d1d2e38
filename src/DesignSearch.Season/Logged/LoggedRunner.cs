using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Logged;

/// <summary>Gives every lane its logged heat, holds its air where that is wanted, and writes down what the air was. It reads arrays, so it is no block of lanes.</summary>
internal sealed class LoggedRunner<T> : SourceRunner<T>
    where T : unmanaged, ILane<T>
{
    // Far more than any house loses, so that the air follows within a hundredth of a kelvin; little enough that no digit is lost [W/K].
    private const double HoldWPerK = 1e5;

    private readonly LoggedNumbers?[] lanes;
    private readonly T[] given, hold, held, sumAir, sumHold;
    private readonly double steps;
    private int hour = -1;

    public LoggedRunner(in SourceStart start, int batches)
        : base(LoggedFlows.Kind)
    {
        lanes = new LoggedNumbers?[batches * T.Width];
        for (var i = 0; i < lanes.Length; i++)
            lanes[i] = start.Find<LoggedNumbers>(i);
        (given, hold, held, sumAir, sumHold) = (new T[batches], new T[batches], new T[batches], new T[batches], new T[batches]);
        steps = Math.Round(3600 / start.StepSeconds);
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
        book.Heat(LoggedFlows.Heat, given[batch] * T.Of(steps));
        book.HeatBothWays(LoggedFlows.Hold, sumHold[batch]);
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
