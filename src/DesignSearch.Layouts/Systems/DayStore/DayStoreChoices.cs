using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.DayStore;

namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>What can be chosen of a day-heat store.</summary>
public static class DayStoreChoices
{
    /// <summary>Pipe of the store; without it there is none.</summary>
    public static PartChoice<EarthPipe> Pipe { get; } = new("day_pipe", "pipe of a day-heat store", EarthPipe.Definition)
    {
        NamesTheLayout = true,
        ComesWith = " with fan and headers",
    };

    /// <summary>Pipe for each square metre of floor.</summary>
    public static NumberChoice PipeMPerM2 { get; } = new("day_pipe_m_per_m2", "pipe for each m² of floor", "m/m²", 1, 8)
    {
        Standard = 4,
        Tried = [2, 4],
        Under = Pipe,
    };

    /// <summary>Middle of the pipes below the floor.</summary>
    public static NumberChoice DepthM { get; } = new("day_pipe_depth_m", "depth of those pipes", "m", 0.3, 1)
    {
        Standard = 0.5,
        Under = Pipe,
    };

    /// <summary>The fan.</summary>
    public static PartChoice<StoreFan> Fan { get; } =
        new("day_fan", "fan of the day-heat store", StoreFan.Definition) { Under = Pipe, MayBeNone = false };

    /// <summary>Air above which day heat is carried down.</summary>
    public static NumberChoice ChargeC { get; } = new("day_charge_c", "air from which day heat is carried down", "°C", 8, 25)
    {
        Standard = 19,
        Under = Pipe,
    };

    /// <summary>Air below which heat is brought back.</summary>
    public static NumberChoice SetC { get; } = new("day_set_c", "air below which heat is brought back", "°C", 0, 20)
    {
        Standard = 4,
        Tried = [4],
        AboveLimit = true,
        Under = Pipe,
    };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [Pipe, PipeMPerM2, DepthM, Fan, ChargeC, SetC];
}
