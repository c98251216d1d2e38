using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Design;

/// <summary>How the whole plant is said.</summary>
internal static class PlantWords
{
    public static FormattableString Budget(decimal price, MoneyTerms money) =>
        $"It costs {price:0} of {money.Budget:0} {money.Currency} to build.";

    public static FormattableString Missing(IReadOnlyList<string> parts) => $"The catalogue lacks {string.Join(", and ", parts)}.";

    public static FormattableString FloorLoad(FloorLoad load, double bears) =>
        $"Full of water the {load.What} weighs {load.KgPerM2:0} kg on each square metre it stands on; the floor bears {bears:0}.";

    public static FormattableString Vents(double setC, double ventsC, double apartK) =>
        $"It heats to {setC:0.#} °C, and the vents open at {ventsC:0} °C: {apartK:0} K are to lie between.";

    public static FormattableString PowerCut(int cutHours, int hoursAbove, double lowestC, double limitC) =>
        $"Of {cutHours} h without mains it stays above {limitC:0.#} °C for {hoursAbove} h; the lowest is {lowestC:0.0} °C.";

    /// <summary>The layout in a few plain words.</summary>
    public static string Title(BuiltLayout built)
    {
        var words = built.Systems.SelectMany(s => s.Words).ToList();
        return words.Count == 0 ? "bare house" : string.Join(", ", words);
    }
}
