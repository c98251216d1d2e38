using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Piping;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>What can be chosen of a compost heap.</summary>
public static class CompostChoices
{
    /// <summary>Material of the heap; without it there is none.</summary>
    public static PartChoice<CompostMix> Mix { get; } = new("compost_mix", "material of a compost heap", CompostMix.Definition) { NamesTheLayout = true };

    /// <summary>Size of the heap.</summary>
    public static NumberChoice VolumeM3 { get; } = new("compost_m3", "size of the compost heap", "m³", 1, 60) { Standard = 12, Tried = [8, 12], Under = Mix };

    /// <summary>Wrap round the heap.</summary>
    public static PartChoice<CompostWrap> Wrap { get; } = new("compost_wrap", "wrap round the compost heap", CompostWrap.Definition) { Under = Mix };

    /// <summary>Pipe in the heap, and as much again in the house.</summary>
    public static PartChoice<CompostCoil> Coil { get; } =
        new("compost_coil", "pipe in the compost heap, and as much again in the house", CompostCoil.Definition) { Under = Mix, MayBeNone = false };

    /// <summary>Length of that pipe in the heap.</summary>
    public static NumberChoice CoilM { get; } = new("compost_coil_m", "length of that pipe in the heap", "m", 10, 400) { Standard = 100, Tried = [75, 150], Under = Mix };

    /// <summary>The pump.</summary>
    public static PartChoice<Pump> HeapPump { get; } = new("compost_pump", "pump of the compost heap", Pump.Definition) { Under = Mix, MayBeNone = false };

    /// <summary>Thermostat of the pump.</summary>
    public static NumberChoice SetC { get; } = new(
        "compost_set_c", "thermostat of the compost heap's pump", "°C", 0,
        25)
    {
        Standard = 3,
        Tried = [3],
        AboveLimit = true,
        Under = Mix,
    };

    /// <summary>Core below which the pump rests.</summary>
    public static NumberChoice RestC { get; } = new("compost_rest_c", "core below which that pump rests", "°C", 0, 60) { Standard = 40, Tried = [40, 45], Under = Mix };

    /// <summary>When it is built.</summary>
    public static NumberChoice BuiltDays { get; } =
        new("compost_built_days", "days after the season's start at which the heap is built", "days", 0, 120) { Standard = 0, Tried = [0, 30], Whole = true, Under = Mix };

    /// <summary>Glycol in its water, by mass, so that the outdoor pipes do not freeze.</summary>
    public static NumberChoice GlycolPercent { get; } =
        new("compost_glycol_percent", "glycol in the compost heap's pipes, by mass", "%", 0, 50)
        {
            Standard = 40,
            Tried = [30, 40, 48],
            Under = Mix,
        };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [Mix, VolumeM3, Wrap, Coil, CoilM, HeapPump, SetC, RestC, BuiltDays, GlycolPercent];
}
