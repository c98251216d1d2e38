using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Benches;

namespace DesignSearch.Layouts.Systems.Benches;

/// <summary>What can be chosen of a bench.</summary>
public static class BenchChoices
{
    /// <summary>The bench.</summary>
    public static PartChoice<Bench> Bench { get; } = new("bench", "bench under fleece", Parts.Benches.Bench.Definition) { NamesTheLayout = true };

    /// <summary>Thermostat of a heated one.</summary>
    public static NumberChoice SetC { get; } = new("bench_set_c", "thermostat of the heated bench", "°C", 0, 25)
    {
        Standard = 2,
        Tried = [2, 3],
        AboveLimit = true,
        Under = Bench,
        Also = choices => choices.Get(Bench) is { WattsPerM2: > 0 },
    };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [Bench, SetC];
}
