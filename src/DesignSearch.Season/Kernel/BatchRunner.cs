using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Solar;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Kernel;

/// <summary>Carries up to <see cref="Most"/> batches through a winter in turn, part by part: while one waits for its own result, the next one works.</summary>
internal static class BatchRunner<T>
    where T : unmanaged, ILane<T>
{
    public const int Most = 2;

    /// <summary>Simulates 1 to <see cref="Most"/> × width layouts; spare lanes carry the last one again.</summary>
    public static unsafe void Run(WinterForcing forcing, ReadOnlySpan<LayoutCase> cases, Span<Outcome> outcomes, Action<HourRow>? hourly, double stepSeconds)
    {
        var count = (cases.Length + T.Width - 1) / T.Width;
        var lanes = count * T.Width;
        // On the stack: nothing is left behind for the collector of garbage.
        Span<HouseTerms<double>> houses = stackalloc HouseTerms<double>[lanes];
        Span<LoopTerms<double>> loops = stackalloc LoopTerms<double>[lanes];
        for (var i = 0; i < lanes; i++)
        {
            var layout = cases[Math.Min(i, cases.Length - 1)];
            (houses[i], loops[i]) = (HouseTerms.From(layout.Installation, forcing.Assumptions), LoopTerms.From(layout, forcing.Assumptions));
        }

        var sources = SourceRunner<T>.Open(cases, new SourceStart(cases, houses, forcing, stepSeconds), count);
        var (table, each) = (FlowTable.Plain, HouseBlock<T>.OwnOffers);
        foreach (var source in sources)
            (table, each) = (table.With(source.Kind), each + source.Kind.Offers);
        var room = (Batch<T>*)NativeMemory.AlignedAlloc((nuint)(sizeof(Batch<T>) * count), Pack.CacheLine);
        var offers = (Offer<T>*)NativeMemory.AlignedAlloc((nuint)(sizeof(Offer<T>) * each * count), Pack.CacheLine);
        var sums = (T*)NativeMemory.AlignedAlloc((nuint)(sizeof(T) * table.Count * count), Pack.CacheLine);
        try
        {
            var run = new SeasonRun<T>(forcing, table, sources, new(room, count), new(sums, table.Count * count), new(new(offers, each * count), each), stepSeconds);
            for (var b = 0; b < count; b++)
                run.Batches[b] = new Batch<T>(houses.Slice(b * T.Width, T.Width), loops.Slice(b * T.Width, T.Width), forcing, stepSeconds);
            Winter(run, cases, loops, hourly);
            for (var i = 0; i < cases.Length; i++)
                outcomes[i] = OutcomeReader.Read(run, i, cases[i].Installation);
        }
        finally
        {
            NativeMemory.AlignedFree(room);
            NativeMemory.AlignedFree(sums);
            NativeMemory.AlignedFree(offers);
            foreach (var source in sources)
                source.Dispose();
        }
    }

    private static void Winter(in SeasonRun<T> run, ReadOnlySpan<LayoutCase> cases, ReadOnlySpan<LoopTerms<double>> loops, Action<HourRow>? hourly)
    {
        var hours = run.Forcing.Hours;
        var winter = run.Forcing.Winter;
        var batches = run.Batches;
        run.Begin();
        for (var h = 0; h < hours.Length; h++)
        {
            ref readonly var f = ref hours[h];
            if (h == winter.WarmUpHours)
                run.Begin();
            for (var b = 0; b < batches.Length; b++)
            {
                batches[b].House.Hour(f);
                Sun(ref batches[b].Loop, f, cases, loops, b * T.Width, winter.GlobalWPerM2[h] > 0 ? h : -1);
            }

            foreach (var source in run.Sources)
                source.Hour(f);
            for (var s = 0; s < run.Steps; s++)
                Step(batches, run.Sources, run.Doors, run.Offers);
            for (var b = 0; b < batches.Length; b++)
                run.Book(b, f, h);
            hourly?.Invoke(OutcomeReader.Row(run, f, h, cases[0].Installation, loops[0]));
        }
    }

    // Apart from the long loop over the hours, which the machine may have to compile while it runs.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Step(Span<Batch<T>> batches, ReadOnlySpan<SourceRunner<T>> sources, DoorUse doors, in OfferTable<T> offers)
    {
        if (doors != DoorUse.None)
            ThroughDoors(batches, sources, doors);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Eliminate();
        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.StandingLoss(batches[b].House.Air);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Reduce(batches[b].Loop.TankLoss);
        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.Circulate();
        foreach (var source in sources)
            source.Offer(batches, offers);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Decide(batches[b].Loop.TopAhead, offers.Of(b));
        foreach (var source in sources)
        {
            if (source.Kind.UsesTank)
                source.Charge(batches);
        }

        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.Settle(batches[b].House.ReleaseW, batches[b].House.ReleaseShare);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Settle();
        foreach (var source in sources)
            source.Settle(batches, offers);
        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.Mix();
    }

    private static void ThroughDoors(Span<Batch<T>> batches, ReadOnlySpan<SourceRunner<T>> sources, DoorUse doors)
    {
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.CloseDoors(doors);
        foreach (var source in sources)
        {
            if (source.Kind.Doors != DoorUse.None)
                source.Prepare(batches);
        }

        for (var b = 0; b < batches.Length && doors > DoorUse.InnerSource; b++)
            batches[b].House.TakeDoors(doors);
    }

    // Every layout may have a plane of its own: gathered once an hour; h is negative in the dark, when there is nothing to gather.
    private static void Sun(ref LoopBlock<T> loop, in HourForcing f, ReadOnlySpan<LayoutCase> cases, ReadOnlySpan<LoopTerms<double>> loops, int first, int h)
    {
        Span<double> side = stackalloc double[3 * Pack.Widest];
        side.Clear();
        for (var i = 0; i < T.Width && h >= 0; i++)
        {
            if (!(loops[first + i].AreaM2 > 0) || cases[Math.Min(first + i, cases.Length - 1)].Plane is not { } plane)
                continue;
            side[i] = plane.BeamWPerM2[h];
            side[i + Pack.Widest] = plane.SkyWPerM2[h] + plane.GroundWPerM2[h];
            side[i + 2 * Pack.Widest] = plane.CosIncidence[h];
        }

        loop.Hour(f, T.Load(side), T.Load(side[Pack.Widest..]), T.Load(side[(2 * Pack.Widest)..]));
    }
}
