using DesignSearch.Layouts.Design;
using DesignSearch.Parts.DayStore;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.DayStore;

namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>Flow and numbers of a store, worked out once for each pipe, fan, field, depth and soil.</summary>
internal sealed class DayStoreSizing
{
    private const int Most = 4096;
    private const double SecondsPerHour = 3600;

    private readonly Memory<Key, (double FlowM3PerS, DayStoreNumbers Numbers)> known = new(Most);

    private sealed record Key(EarthPipe Pipe, StoreFan Fan, PipeField Field, double DepthM, SeasonAssumptions Soil);

    /// <summary>The pipe as the season knows it.</summary>
    public static EarthPipeNumbers Numbers(EarthPipe pipe) =>
        new(pipe.BoreMm / 1000, pipe.OuterMm / 1000, pipe.WallWPerMK, pipe.FrictionFactor, pipe.FilmFactor);

    /// <summary>Flow where the fan's pressure is what the pipes take, and numbers with set points yet to come.</summary>
    public (double FlowM3PerS, DayStoreNumbers Numbers) Of(
        EarthPipe pipe, StoreFan fan, PipeField field, double depthM, SeasonAssumptions soil) =>
        known.Of(new(pipe, fan, field, depthM, soil), _ =>
        {
            var numbers = Numbers(pipe);
            var free = fan.FlowAtNoHeadM3PerH / SecondsPerHour;
            var flow = EarthPipeAir.FanFlowM3PerS(numbers, field.LengthM, field.Count, fan.HeadAtNoFlowPa, free);
            var store = DayStoreNumbers.Of(
                numbers, field.Count, field.LengthM, field.SpacingM, depthM, flow, fan.Watts, chargeAboveC: 0, setPointC: 0, soil);
            return (flow, store);
        });
}
