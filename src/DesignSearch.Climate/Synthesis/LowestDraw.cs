using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Gives a drawn winter a lowest hour drawn from the distribution of yearly minima, as typical years leave their coldest nights out.</summary>
internal static class LowestDraw
{
    /// <param name="drawn">The winter.</param>
    /// <param name="level">Lowest hour of a return period [°C].</param>
    /// <param name="levels">Levels of a stress week with a given lowest hour.</param>
    /// <param name="number">Number of the winter.</param>
    /// <param name="seed">Seed of all.</param>
    /// <param name="options">How winters are made.</param>
    /// <returns>The same winter where it is cold enough by itself.</returns>
    public static Winter Over(Winter drawn, Func<WinterOptions, double> level, Func<WinterOptions, HardLevels> levels, int number, ulong seed, WinterOptions options)
    {
        var chance = new XoshiroStream(seed, RandomPurpose.Lowest, number).NextUnit();
        var years = Math.Max(1.001, 1 / chance);
        var lowest = level(options with { HardReturnYears = years, HardLowestC = null });
        if (lowest >= drawn.AirC.Skip(drawn.WarmUpHours).Min())
            return drawn;
        var drawnOptions = options with { HardReturnYears = years, HardLowestC = lowest, PowerCutHours = 0 };
        return HardWinter.Over(drawn, levels(drawnOptions), drawnOptions, drawn.Name, drawn.Kind);
    }
}
