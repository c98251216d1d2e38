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

    /// <summary>
    /// A problem of the family of ZDT1 to 3 whose x2 … xn are best at drawn places away from the bounds, and the distances count by a power.
    /// The front is that of the original.
    /// </summary>
    /// <param name="number">1, 2 or 3.</param>
    /// <param name="seed">Of the places, 0.15 … 0.85.</param>
    /// <param name="power">1 for the distance itself, 2 for its square.</param>
    /// <param name="drift">How far each place shifts along the front, at most.</param>
    public static FormulaProblem Moved(int number, int seed, double power = 1, double drift = 0)
    {
        var random = new Random(seed);
        var places = Enumerable.Range(0, 30).Select(_ => 0.15 + (0.7 * random.NextDouble())).ToArray();
        var bounds = Enumerable.Repeat((0.0, 1.0), 30).ToArray();
        return new(FormulaProblem.Reals(bounds), 2, 0, x =>
        {
            var y = x.Select((v, i) => i == 0 ? v : Far(v, Math.Clamp(places[i] + (drift * Math.Sin((6 * x[0]) + i)), 0.1, 0.9))).ToArray();
            return (Value(number, y), []);
        });

        double Far(double v, double place) => Math.Pow(Math.Abs(v - place) / Math.Max(place, 1 - place), power);
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
