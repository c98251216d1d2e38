namespace DesignSearch.Layouts.Design;

/// <summary>Cautions that more than one system gives; each is told once.</summary>
public static class Dangers
{
    /// <summary>Stores of water.</summary>
    public static Caution WeightAndDrowning { get; } = new("Weight and drowning", """
        Water weighs a tonne a cubic metre: firm level ground, straps against tipping. Children and animals drown in open water: a lid on
        every tank and barrel.
        """.ReplaceLineEndings(" "));

    /// <summary>In any closed house.</summary>
    public static Caution CarbonMonoxide { get; } = new("Carbon monoxide", "No unvented flame in a closed greenhouse, ever, not even for one cold night.");

    /// <summary>For any house.</summary>
    public static Caution PowerCut { get; } = new("Power cut", """
        It comes with the storm. What is left then is the cover, the water and the ground; keep fleece for the plants that matter most.
        """.ReplaceLineEndings(" "));
}
