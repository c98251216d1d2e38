namespace DesignSearch.Layouts.Design;

/// <summary>Cautions that more than one system gives; each is told once.</summary>
public static class Dangers
{
    /// <summary>Stores of water.</summary>
    public static Caution WeightAndDrowning { get; } = new("Weight and drowning", """
        Water weighs a tonne a cubic metre: firm level ground, straps against tipping. Children and animals drown in open water: a lid on
        every tank and barrel.
        """.ReplaceLineEndings(" ")) { Harm = Harm.Kills };

    /// <summary>A house made tight, or one whose heat fails with the current: both tempt to a flame.</summary>
    public static Caution CarbonMonoxide { get; } = new("Carbon monoxide from a makeshift flame", """
        When the current fails or the house is tight, a stove or burner without a flue tempts; its carbon monoxide kills within a night.
        No unvented flame in a closed greenhouse, ever, not even for one cold night.
        """.ReplaceLineEndings(" ")) { Harm = Harm.Kills };

    /// <summary>Whatever is done on or under a roof.</summary>
    public static Caution Height { get; } = new("Working at height", """
        A ladder is not a scaffold: firm ground, tied or footed, three points of hold, never alone and never in wind or frost. Do not step
        or lean on glazing or glazing bars: a plank or a tower carries you, they do not.
        """.ReplaceLineEndings(" "));

    /// <summary>Panes that are carried, or that one works beneath.</summary>
    public static Caution Glass { get; } = new("Glass", """
        Panes break: gloves, goggles and firm shoes, two people for a large one, carried upright and never in wind. Toughened glass bursts
        all at once, also long after a knock, so no cold water on hot glass. Nobody passes beneath a broken pane until it is covered.
        """.ReplaceLineEndings(" "));

    /// <summary>For any plant that needs current.</summary>
    public static Caution PowerCut { get; } = new("Power cut", """
        It comes with the storm. What is left then is the cover, the water and the ground; keep fleece for the plants that matter most.
        """.ReplaceLineEndings(" ")) { Harm = Harm.Spoils };
}
