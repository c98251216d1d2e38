namespace DesignSearch.Fitting.Estimate;

/// <summary>What is taken of a figure before the log is looked at: its logarithm is normal about that of the usual value.</summary>
/// <param name="Name">What it is, in plain words.</param>
/// <param name="Unit">Its unit as a person reads it; empty for a factor.</param>
/// <param name="Usual">The usual value, above 0.</param>
/// <param name="Spread">Standard deviation of the logarithm, above 0.</param>
/// <param name="Why">Where both come from.</param>
public sealed record Prior(string Name, string Unit, double Usual, double Spread, string Why)
{
    /// <summary>Loss of cover, leaks and edge.</summary>
    public static Prior Loss { get; } = new(
        "loss against the drawing", "", 1, 0.25,
        "own choice: a cover is known to a fifth, leaks to half and twice");

    /// <summary>Heat that pots, beds and frame store.</summary>
    public static Prior Store { get; } = new(
        "heat that pots, beds and frame store", "kJ/(m²K) of floor", 30_000, 0.7,
        "own choice: 7 litres of water a square metre, and a quarter or four times as much");

    /// <summary>What goes between them and the air.</summary>
    public static Prior Coupling { get; } = new(
        "what goes between them and the air", "W/(m²K) of floor", 6, 0.6,
        "own choice: as much surface as floor, with the film of a still surface");

    /// <summary>Sun that stays in the house.</summary>
    public static Prior Sun { get; } = new(
        "sun against the drawing", "", 1, 0.3,
        "own choice: dirt, shade, and what evaporates are known to a third");
}
