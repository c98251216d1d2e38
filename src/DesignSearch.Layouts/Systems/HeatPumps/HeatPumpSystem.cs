using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.HeatPumps;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.HeatPumps;

namespace DesignSearch.Layouts.Systems.HeatPumps;

/// <summary>A small air-source heat pump with one indoor unit.</summary>
public sealed class HeatPumpSystem : PlantSystem
{
    /// <summary>What the unit must rest in against the winters.</summary>
    public static CheckRule Cold { get; } = new(
        "heat-pump-cold",
        "cold in which the heat pump rests",
        "The sheet's least outdoor air; told, not refused: the season counts what the house does without it");

    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } = [HeatPump.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => HeatPumpChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<AssumptionEntry> Assumptions => HeatPumpAssumptions.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules { get; } = [Cold];

    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        if (task.Layout.Get(HeatPumpChoices.Pump) is not { } pump)
            return null;
        var wish = task.Layout.Get(HeatPumpChoices.SetC);
        RatedPoint[] points = [.. pump.Points.Select(p => new RatedPoint(p.OutdoorC, p.HeatW, p.Cop))];
        var numbers = new HeatPumpNumbers(
            OutdoorLine.Through(points, p => p.HeatW),
            OutdoorLine.Through(points, p => p.Cop),
            pump.LeastW / pump.HeatAt7W,
            pump.CopGainAtLeast,
            pump.CyclingLoss,
            pump.LeastOutdoorC,
            pump.IdleW,
            pump.IsFrostRated,
            Math.Max(wish, pump.LowestSetPointC));
        return new DesignedHeatPump(pump, wish, numbers);
    }
}
