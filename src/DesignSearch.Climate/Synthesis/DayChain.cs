using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>
/// Day-to-day chain of highest temperature, lowest temperature and clearness as standardised residuals,
/// X = A·X(yesterday) + B·e; Richardson, Water Resources Research 17 (1981).
/// </summary>
/// <param name="A">Memory, row by row.</param>
/// <param name="B">Lower triangle of the shocks, row by row.</param>
internal sealed record DayChain(double[] A, double[] B)
{
    /// <summary>Constants of Richardson and Wright (1984) for all the United States, used in summer and in humid continental climates.</summary>
    public static DayChain Published { get; } = new([.567, .086, -.002, .253, .504, -.050, -.006, -.039, .244], [.781, 0, 0, .328, .637, 0, .238, -.341, .873]);

    /// <summary>Winter by the sea or in a valley: fitted to open typical-year files of such places.</summary>
    public static DayChain MaritimeOrValley { get; } = new([.586, .018, -.125, .213, .555, -.091, -.098, -.027, .320], [.825, 0, 0, .060, .729, 0, .450, -.465, .693]);

    /// <summary>Winter dry inland: fitted to open typical-year files of such places.</summary>
    public static DayChain DryInland { get; } = new([.599, .017, .082, .339, .406, .011, -.046, -.055, .262], [.781, 0, 0, .351, .650, 0, .167, -.359, .873]);

    /// <summary>The chain of a month.</summary>
    public static DayChain For(ClimateCharacter character, bool winter) => (character, winter) switch
    {
        (ClimateCharacter.MaritimeOrValley, true) => MaritimeOrValley,
        (ClimateCharacter.DryInland, true) => DryInland,
        _ => Published,
    };

    /// <summary>One day further.</summary>
    public (double High, double Low, double Clear) Next((double High, double Low, double Clear) x, XoshiroStream random)
    {
        var (e1, e2, e3) = (random.NextNormal(), random.NextNormal(), random.NextNormal());
        return (
            A[0] * x.High + A[1] * x.Low + A[2] * x.Clear + B[0] * e1,
            A[3] * x.High + A[4] * x.Low + A[5] * x.Clear + B[3] * e1 + B[4] * e2,
            A[6] * x.High + A[7] * x.Low + A[8] * x.Clear + B[6] * e1 + B[7] * e2 + B[8] * e3);
    }
}
