namespace DesignSearch.Search.Tests;

/// <summary>ZDT1–4 and 6 (Zitzler, Deb and Thiele, 2000), and ZDT1 with its optimum moved inside the bounds.</summary>
public static class Continuous
{
    public static FormulaProblem Zdt(int number)
    {
        var n = number is 4 or 6 ? 10 : 30;
        var bounds = Enumerable.Range(0, n).Select(i => number == 4 && i > 0 ? (-5.0, 5.0) : (0.0, 1.0)).ToArray();
        return new(FormulaProblem.Reals(bounds), 2, 0, x => (Value(number, x), []));
    }

    /// <summary>ZDT1 whose x2 … xn are best at places between 0.2 and 0.8 that differ from variable to variable.</summary>
    public static FormulaProblem MovedInside()
    {
        var bounds = Enumerable.Repeat((0.0, 1.0), 30).ToArray();
        return new(FormulaProblem.Reals(bounds), 2, 0, x =>
        {
            var y = x.Select((v, i) => i == 0 ? v : Math.Abs(v - Place(i)) / Math.Max(Place(i), 1 - Place(i))).ToArray();
            return (Value(1, y), []);
        });

        static double Place(int i) => 0.2 + (0.6 * ((i * 0.6180339887498949) % 1));
    }

    private static double[] Value(int number, double[] x)
    {
        var rest = 0.0;
        for (var i = 1; i < x.Length; i++)
            rest += number == 4 ? (x[i] * x[i]) - (10 * Math.Cos(4 * Math.PI * x[i])) : x[i];
        var mean = rest / (x.Length - 1);
        var f1 = number == 6 ? 1 - (Math.Exp(-4 * x[0]) * Math.Pow(Math.Sin(6 * Math.PI * x[0]), 6)) : x[0];
        var g = number switch { 4 => 1 + (10 * (x.Length - 1)) + rest, 6 => 1 + (9 * Math.Pow(mean, 0.25)), _ => 1 + (9 * mean) };
        var share = f1 / g;
        var f2 = number switch
        {
            2 or 6 => g * (1 - (share * share)),
            3 => g * (1 - Math.Sqrt(share) - (share * Math.Sin(10 * Math.PI * f1))),
            _ => g * (1 - Math.Sqrt(share)),
        };
        return [f1, f2];
    }
}
