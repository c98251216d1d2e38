using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Skin;

namespace DesignSearch.Layouts.Systems.Skin;

/// <summary>What is added to the skin of the house: lining, night cover, seals, edge board, wind break.</summary>
public sealed class SkinSystem : PlantSystem
{
    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } =
        [NightCover.Definition, Lining.Definition, Sealing.Definition, PerimeterBoard.Definition, WindBreak.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => SkinChoices.All;

    /// <inheritdoc/>
    public override bool NeedsLowVoltage(IChoices choices) => choices.Get(SkinChoices.NightCover) is { IsAutomatic: true };

    /// <inheritdoc/>
    public override VariedChoice Allowed(VariedChoice varied, Greenhouse house, TomlTable choices)
    {
        ArgumentNullException.ThrowIfNull(varied);
        ArgumentNullException.ThrowIfNull(choices);
        if (varied.Choice != SkinChoices.Lining || Skin.ShadedWallM2(house) > 0 || !varied.Levels.Any(IsBoard))
            return varied;
        if (choices.Find(varied.Choice.Key) is { } named)
            choices.Fault(named, SkinWords.NoWallForBoard);
        return varied with { Levels = [.. varied.Levels.Where(l => !IsBoard(l)).DefaultIfEmpty(ChoiceValue.None)] };
    }

    private static bool IsBoard(ChoiceValue level) => level.Part is Lining { Transmittance: <= 0 };

    /// <summary>The skin of a layout.</summary>
    public static Skin Of(Layout layout) => new(
        layout.Get(SkinChoices.NightCover),
        layout.Get(SkinChoices.Lining),
        layout.Get(SkinChoices.Sealing),
        layout.Get(SkinChoices.PerimeterBoard),
        layout.Get(SkinChoices.WindBreak));

    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        var skin = Of(task.Layout);
        if (skin.IsBare)
            return null;
        return new DesignedSkin(skin, task.Scenario.Greenhouse, skin.NightCover is { IsAutomatic: true } cover ? CoverMotors.Of(task, cover.Drive == CoverDrive.Clock) : null);
    }
}
