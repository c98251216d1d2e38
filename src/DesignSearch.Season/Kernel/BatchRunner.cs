using System.Runtime.InteropServices;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Compost;
using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Kernel;

/// <summary>Carries up to <see cref="Most"/> batches through a winter in turn, part by part: while one waits for its own result, the next one works.</summary>
internal static class BatchRunner<T>
    where T : unmanaged, ILane<T>
{
    public const int Most = 2;

    private const int CacheLine = 64;

    /// <summary>Simulates 1 to <see cref="Most"/> × width layouts; spare lanes carry the last one again.</summary>
    public static unsafe void Run(WinterForcing forcing, ReadOnlySpan<LayoutCase> cases, Span<Outcome> outcomes, Action<HourRow>? hourly, double stepSeconds)
    {
        var count = (cases.Length + T.Width - 1) / T.Width;
        var lanes = count * T.Width;
        // On the stack: nothing is left behind for the collector of garbage.
        Span<HouseCoefficients> houses = stackalloc HouseCoefficients[lanes];
        Span<LoopCoefficients> loops = stackalloc LoopCoefficients[lanes];
        // An array of references, one small object a run.
        var heaps = new CompostNumbers[lanes];
        Span<BenchCoefficients> benches = stackalloc BenchCoefficients[lanes];
        var (rots, hasBench) = (false, false);
        for (var i = 0; i < lanes; i++)
        {
            var layout = cases[Math.Min(i, cases.Length - 1)];
            (houses[i], loops[i]) = (HouseCoefficients.From(layout.Installation, forcing.Assumptions), LoopCoefficients.From(layout, forcing.Assumptions));
            heaps[i] = layout.Installation.Compost;
            rots |= heaps[i].VolumeM3 > 0;
            benches[i] = BenchCoefficients.From(layout.Installation, forcing.Assumptions);
            hasBench |= benches[i].Is > 0;
        }

        var room = (Batch<T>*)NativeMemory.AlignedAlloc((nuint)(sizeof(Batch<T>) * count), CacheLine);
        try
        {
            var batches = new Span<Batch<T>>(room, count);
            for (var b = 0; b < count; b++)
                batches[b] = new Batch<T>(houses.Slice(b * T.Width, T.Width), loops.Slice(b * T.Width, T.Width), heaps.AsSpan(b * T.Width, T.Width), benches.Slice(b * T.Width, T.Width), forcing, stepSeconds);
            Winter(forcing, batches, cases, loops, rots, hasBench, hourly, stepSeconds);
            for (var i = 0; i < cases.Length; i++)
                outcomes[i] = OutcomeReader.Read(ref batches[i / T.Width], i % T.Width, forcing.Winter.SeasonHours, stepSeconds, loops[i], cases[i].Installation);
        }
        finally
        {
            NativeMemory.AlignedFree(room);
        }
    }

    private static void Winter(WinterForcing forcing, Span<Batch<T>> batches, ReadOnlySpan<LayoutCase> cases, ReadOnlySpan<LoopCoefficients> loops, bool rots, bool hasBench, Action<HourRow>? hourly, double stepSeconds)
    {
        var steps = (int)Math.Round(3600 / stepSeconds);
        var hours = forcing.Hours;
        for (var h = 0; h < hours.Length; h++)
        {
            ref readonly var f = ref hours[h];
            for (var b = 0; b < batches.Length; b++)
            {
                ref var batch = ref batches[b];
                if (h == forcing.Winter.WarmUpHours)
                    batch.Tally.Start(ref batch.House, ref batch.Loop, ref batch.Compost, ref batch.Bench);
                batch.House.Hour(f);
                if (rots)
                    batch.Compost.Hour(f);
                if (hasBench)
                    batch.Bench.Hour(f);
                Sun(ref batch.Loop, f, cases, loops, b * T.Width, forcing.Winter.GlobalWPerM2[h] > 0 ? h : -1);
            }

            for (var s = 0; s < steps; s++)
                Step(batches, rots, hasBench);
            for (var b = 0; b < batches.Length; b++)
            {
                ref var batch = ref batches[b];
                batch.Tally.Flows(ref batch.House, ref batch.Loop, f, steps);
                if (rots)
                    batch.Tally.Heap(ref batch.Compost, f);
                if (hasBench)
                    batch.Tally.Benches(ref batch.Bench, f);
                batch.Tally.Frost(ref batch.House, ref batch.Loop, ref batch.Bench, f, h, steps);
            }

            hourly?.Invoke(OutcomeReader.Row(ref batches[0], forcing.Winter, f, h, steps, cases[0].Installation, loops[0]));
        }
    }

    private static void Step(Span<Batch<T>> batches, bool rots, bool hasBench)
    {
        // Without any bench or heap in the run their parts are left out: a lane without one adds nothing but zeros, so no bit changes.
        for (var b = 0; hasBench && b < batches.Length; b++)
            batches[b].Bench.Shed(ref batches[b].House);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Eliminate();
        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.Lose(batches[b].House.Air);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Reduce(batches[b].Loop.TankLoss);
        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.Circulate();
        for (var b = 0; hasBench && b < batches.Length; b++)
            batches[b].Bench.Offer(ref batches[b].House);
        for (var b = 0; rots && b < batches.Length; b++)
            batches[b].Compost.Offer(ref batches[b].House);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Decide(batches[b].Loop.TopAhead);
        for (var b = 0; hasBench && b < batches.Length; b++)
            batches[b].Bench.Settle(batches[b].House.Air);
        for (var b = 0; rots && b < batches.Length; b++)
            batches[b].Compost.Settle(batches[b].House.Air);
        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.Settle(batches[b].House.ReleaseW, batches[b].House.ReleaseShare);
        for (var b = 0; b < batches.Length; b++)
            batches[b].House.Settle();
        for (var b = 0; b < batches.Length; b++)
            batches[b].Loop.Mix();
    }

    // Every layout may have a plane of its own: gathered once an hour; h is negative in the dark, when there is nothing to gather.
    private static void Sun(ref LoopBlock<T> loop, in HourForcing f, ReadOnlySpan<LayoutCase> cases, ReadOnlySpan<LoopCoefficients> loops, int first, int h)
    {
        Span<double> side = stackalloc double[3 * Pack.Widest];
        side.Clear();
        for (var i = 0; i < T.Width && h >= 0; i++)
        {
            if (!loops[first + i].HasCollector || cases[Math.Min(first + i, cases.Length - 1)].Plane is not { } plane)
                continue;
            side[i] = plane.BeamWPerM2[h];
            side[i + Pack.Widest] = plane.SkyWPerM2[h] + plane.GroundWPerM2[h];
            side[i + 2 * Pack.Widest] = plane.CosIncidence[h];
        }

        loop.Hour(f, T.Load(side), T.Load(side[Pack.Widest..]), T.Load(side[(2 * Pack.Widest)..]));
    }
}
