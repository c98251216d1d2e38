namespace DesignSearch.Climate.Synthesis;

/// <summary>Spreads a day's light over its hours.</summary>
internal static class CloudMaker
{
    /// <summary>Hours that flicker as real skies do; Aguiar and Collares-Pereira, Solar Energy 49 (1992).</summary>
    /// <param name="days">Their clearness and sun.</param>
    /// <param name="seed">Of the winter.</param>
    /// <returns>Global irradiance [W/m²]; each day has exactly its clearness where the clear sky allows it.</returns>
    public static double[] Flickering(SyntheticDays days, ulong seed)
    {
        var global = new double[days.Count * 24];
        for (var d = 0; d < days.Count; d++)
        {
            var random = new XoshiroStream(seed, RandomPurpose.Clouds, d);
            var day = days.Clearness[d];
            var noon = (days.Sunrise[d] + days.Sunset[d]) / 2;
            var memory = 0.38 + 0.06 * Math.Cos(7.4 * day - 2.5);
            var y = random.NextNormal();
            for (var h = 24 * d; h < 24 * d + 24; h++)
            {
                var sine = days.SinAltitude[h];
                if (days.Above[h] <= 0)
                    continue;
                var (mean, sd) = Hour(day, Math.Max(0.02, sine));
                var clear = ClearSky(h % 24 + 0.5 - noon);
                var k = double.NaN;
                for (var attempt = 0; attempt < 8 && !(k >= 0 && k <= clear); attempt++)
                    k = mean + sd * (memory * y + Math.Sqrt(1 - memory * memory) * random.NextNormal());
                y = sd > 0 ? Math.Clamp((k - mean) / sd, -3, 3) : 0;
                global[h] = Math.Clamp(k, 0.01, clear) * days.Above[h];
            }

            MeetDay(global, days, d, day);
        }

        return global;
    }

    /// <summary>A smooth day; Collares-Pereira and Rabl, Solar Energy 22 (1979).</summary>
    public static void Smooth(double[] global, SyntheticDays days, int d)
    {
        var half = (days.Sunset[d] - days.Sunrise[d]) / 24 * Math.PI;
        var noon = (days.Sunrise[d] + days.Sunset[d]) / 2;
        var (a, b) = (0.409 + 0.5016 * Math.Sin(half - Math.PI / 3), 0.6609 - 0.4767 * Math.Sin(half - Math.PI / 3));
        for (var h = 24 * d; h < 24 * d + 24; h++)
            global[h] = days.Above[h] * Math.Max(0.05, a + b * Math.Cos((h % 24 + 0.5 - noon) * Math.PI / 12));
        MeetDay(global, days, d, days.Clearness[d]);
    }

    private static (double Mean, double Sd) Hour(double day, double sine)
    {
        var lambda = -0.19 + 1.12 * day + 0.24 * Math.Exp(-8 * day);
        var epsilon = 0.32 - 1.60 * (day - 0.50) * (day - 0.50);
        var kappa = 0.19 + day * day * (2.27 - 2.51 * day);
        var mean = lambda + epsilon * Math.Exp(-kappa / sine);
        var width = 0.14 * Math.Exp(-20 * (day - 0.35) * (day - 0.35));
        var growth = 3 * (day - 0.45) * (day - 0.45) + 16 * Math.Pow(day, 5);
        return (mean, width * Math.Exp(growth * (1 - sine)));
    }

    private static double ClearSky(double hoursFromNoon) => Math.Max(0.1, 0.88 * Math.Cos(Math.PI * hoursFromNoon / 30));

    private static void MeetDay(double[] global, SyntheticDays days, int d, double clearness)
    {
        for (var pass = 0; pass < 12; pass++)
        {
            var sum = 0.0;
            for (var h = 24 * d; h < 24 * d + 24; h++)
                sum += global[h];
            if (sum <= 0)
                return;
            var factor = clearness * days.AboveWhPerM2[d] / sum;
            for (var h = 24 * d; h < 24 * d + 24; h++)
                global[h] = Math.Min(global[h] * factor, 0.88 * days.Above[h]);
            if (Math.Abs(factor - 1) < 1e-9)
                return;
        }
    }
}
