using DesignSearch.Physics;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Kernel;

/// <summary>Takes one layout's figures out of the lanes.</summary>
internal static class OutcomeReader
{

    // More than any kind of source declares.
    private const int MostNames = 16;

    public static Outcome Read<T>(in SeasonRun<T> run, int layout, Installation installation)
        where T : unmanaged, ILane<T>
    {
        var (b, lane, step, seasonHours) = (layout / T.Width, layout % T.Width, run.StepSeconds, run.Forcing.Winter.SeasonHours);
        var tally = run.Batches[b].Tally;
        double At(in T value) => Pack.At(value, lane);
        var tank = installation.Tank.WaterKg > 0;
        return new Outcome
        {
            SeasonHours = seasonHours,
            FrostHours = (int)At(tally.FrostHours),
            FrostDegreeHoursKh = At(tally.DegreeHours),
            LowestAirC = At(tally.LowestAir),
            LowestHouseAirC = At(tally.LowestHouse),
            LowestWithinHourC = At(run.PlantsLowest(b)),
            ColdestHour = (int)At(tally.ColdestHour),
            PowerCutHours = (int)At(tally.CutHours),
            PowerCutFrostHours = (int)At(tally.CutFrostHours),
            PowerCutLowestAirC = At(tally.CutHours) > 0 ? At(tally.CutLowestAir) : double.NaN,
            CollectorYieldKwh = At(tally.ToTank) * step / Energy.JoulesPerKwh,
            PumpHours = At(tally.Pump) * step / 3600,
            ReleaseHours = At(tally.ReleaseShare) * step / 3600,
            TankLowestC = tank ? At(tally.TankLow) : double.NaN,
            TankHighestC = tank ? At(tally.TankHigh) : double.NaN,
            TankMeanC = tank ? At(tally.TankSum) / seasonHours : double.NaN,
            Books = Books(run, b, lane, installation.Sources),
            Figures = Figures(run, b, lane, installation.Sources),
        };
    }

    public static HourRow Row<T>(in SeasonRun<T> run, in HourForcing f, int hour, Installation installation, LoopTerms<double> loop)
        where T : unmanaged, ILane<T>
    {
        ref readonly var batch = ref run.Batches[0];
        var (house, water, tally, steps) = (batch.House, batch.Loop, batch.Tally, run.Steps);
        static double At(in T value) => Pack.At(value, 0);
        var (mean, plants) = (At(tally.MeanAir), At(tally.MeanPlants));
        return new HourRow(
            hour,
            run.Forcing.Winter.Start.AddHours(hour),
            f.OutsideC,
            f.SkyC,
            mean,
            plants,
            At(house.Floor),
            installation.Barrels.WaterKg > 0 ? At(house.Barrels) : double.NaN,
            installation.Tank.WaterKg > 0 ? At(water.T1) : double.NaN,
            installation.Tank.WaterKg > 0 ? At(water.T4) : double.NaN,
            loop.AreaM2 > 0 ? At(water.Collector) : double.NaN,
            At(water.SumPump) / steps,
            At(house.SumRelease) / steps,
            At(house.SumHeater) / steps,
            At(water.Light),
            At(house.Sun),
            plants < installation.House.FrostLimitC,
            Columns(run, installation.Sources));
    }

    // The layout's own table, which may be shorter than that of the run it shared.
    private static EnergyBooks Books<T>(in SeasonRun<T> run, int b, int lane, IReadOnlyList<SourceNumbers> sources)
        where T : unmanaged, ILane<T>
    {
        var (own, all, step) = (FlowTable.Of(sources), run.Table, run.StepSeconds);
        var values = new double[own.Count];
        var sums = run.SumsOf(b);
        Span<T> stored = stackalloc T[all.Stores.Length];
        run.Stored(b, stored);
        // The stores were divided by one step, as the flows are sums over steps: the same factor makes both kWh.
        for (var i = 0; i < own.Flows.Length; i++)
        {
            var at = Array.IndexOf(all.Flows, own.Flows[i]);
            values[i] = Kwh(sums[at]);
            values[own.Back + i] = Kwh(sums[all.Back + at]);
        }

        for (var i = 0; i < own.Uses.Length; i++)
        {
            var at = Array.IndexOf(all.Uses, own.Uses[i]);
            values[own.Used + i] = Kwh(sums[all.Used + at]);
            values[own.Cheap + i] = Kwh(sums[all.Cheap + at]);
        }

        for (var i = 0; i < own.Stores.Length; i++)
        {
            var at = Array.IndexOf(all.Stores, own.Stores[i]);
            values[own.Stored + i] = Kwh(stored[at] - sums[all.Stored + at]);
        }

        return new(own, values);

        double Kwh(in T sum) => Pack.At(sum, lane) * step / Energy.JoulesPerKwh;
    }

    private static ValueList<FigureValue> Figures<T>(in SeasonRun<T> run, int b, int lane, IReadOnlyList<SourceNumbers> sources)
        where T : unmanaged, ILane<T>
    {
        if (sources.Count == 0)
            return ValueList<FigureValue>.Empty;
        var figures = new List<FigureValue>();
        Span<T> room = stackalloc T[MostNames];
        foreach (var source in run.Sources)
        {
            if (!Has(sources, source.Kind))
                continue;
            source.Tell(b, room[..source.Kind.Figures.Length]);
            for (var i = 0; i < source.Kind.Figures.Length; i++)
                figures.Add(new(source.Kind.Figures[i], Pack.At(room[i], lane)));
        }

        return ValueList<FigureValue>.Of(figures);
    }

    // Hours are asked of one layout at a time, so the run's sources are its own.
    private static HourValues Columns<T>(in SeasonRun<T> run, IReadOnlyList<SourceNumbers> sources)
        where T : unmanaged, ILane<T>
    {
        if (sources.Count == 0)
            return HourValues.None;
        var (columns, values) = (new List<HourColumn>(), new List<double>());
        Span<T> room = stackalloc T[MostNames];
        foreach (var source in run.Sources)
        {
            if (!Has(sources, source.Kind))
                continue;
            source.Row(0, room[..source.Kind.Columns.Length], run.Steps);
            for (var i = 0; i < source.Kind.Columns.Length; i++)
            {
                columns.Add(source.Kind.Columns[i]);
                values.Add(Pack.At(room[i], 0));
            }
        }

        return new([.. columns], [.. values]);
    }

    private static bool Has(IReadOnlyList<SourceNumbers> sources, SourceKind kind)
    {
        for (var i = 0; i < sources.Count; i++)
        {
            if (sources[i].Kind == kind)
                return true;
        }

        return false;
    }
}
