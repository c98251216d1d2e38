using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Benches;

namespace DesignSearch.Layouts.Systems.Benches;

/// <summary>A bench under fleece, where the scenario says that one is enough.</summary>
public sealed class BenchSystem : PlantSystem
{
    private const string EnoughKey = "bench_enough_m2";
    private const double MostM2 = 200;

    /// <summary>Whether the builder said that a bench is enough.</summary>
    public static CheckRule Enough { get; } = new("bench-enough", "a bench is enough", "The builder's own word");

    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } = [Bench.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => BenchChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<AssumptionEntry> Assumptions => BenchAssumptions.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules { get; } = [Enough];

    /// <inheritdoc/>
    public override SystemWish? ReadWish(TomlTable greenhouse, Greenhouse house)
    {
        ArgumentNullException.ThrowIfNull(greenhouse);
        ArgumentNullException.ThrowIfNull(house);
        var area = greenhouse.Number(EnoughKey, 0, MostM2, BenchWords.EnoughUnit, 0);
        if (area > house.FloorM2)
            greenhouse.FaultAt(EnoughKey, Written.Sentence($"{area}"), BenchWords.FitsTheFloor(house.FloorM2));
        return area > 0 ? new BenchWish(area) : null;
    }

    /// <inheritdoc/>
    public override VariedChoice Allowed(VariedChoice varied, Greenhouse house, TomlTable choices)
    {
        ArgumentNullException.ThrowIfNull(varied);
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(choices);
        if (varied.Choice != BenchChoices.Bench || house.Wish<BenchWish>() is not null)
            return varied;
        if (varied.Levels.Any(l => !l.IsNone) && choices.Find(varied.Choice.Key) is { } named)
            choices.Fault(named, BenchWords.SayEnoughFirst(EnoughKey));
        return varied with { Levels = [ChoiceValue.None] };
    }

    /// <inheritdoc/>
    public override bool NeedsLowVoltage(IChoices choices) => choices.Get(BenchChoices.Bench) is { Volts: > 0 and < SupplyPlan.MainsVolts };

    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        if (task.Layout.Get(BenchChoices.Bench) is not { } bench)
            return null;
        if (task.Scenario.Greenhouse.Wish<BenchWish>() is not { } wish)
            return new BenchNotEnough();
        var watts = bench.WattsPerM2 * wish.AreaM2;
        var numbers = new BenchNumbers(wish.AreaM2, bench.FleeceWPerM2K, watts, task.Layout.Get(BenchChoices.SetC));
        return new DesignedBench(bench, numbers, watts > 0 && SwitchesDirectly(bench.Volts, watts / bench.Volts, task.Shelf));
    }

    // Whether a thermostat of the catalogue bears the current by itself.
    private static bool SwitchesDirectly(double volts, double amperes, PartShelf shelf) =>
        volts >= SupplyPlan.MainsVolts || shelf.Small(SmallPartRole.Thermostat).Any(p => p.Volts == volts && p.RatedA >= amperes);
}
