using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Draws a winter by putting whole spells of other winters in a row, so that runs of dull or cold days survive.</summary>
internal static class SpellDraw
{
    private const int FarthestDays = 10;
    private const int SeamHours = 4;

    public static Winter Draw(IReadOnlyList<Winter> sources, int number, ulong seed, WinterOptions options)
    {
        var random = new XoshiroStream(seed, RandomPurpose.Spells, number);
        var spells = sources.SelectMany((w, s) => SpellsOf(w).Select(spell => (Source: s, spell.First, spell.Count))).ToArray();
        var like = sources[0];
        var days = like.Hours / 24;
        var from = new (int Source, int Day)[days];
        for (var d = 0; d < days;)
        {
            var near = spells.Where(s => Math.Abs(s.First - d) <= FarthestDays).ToArray();
            // None begins near a day within a very long one: then what is left of that.
            if (near.Length == 0)
                near = [.. spells.Where(s => s.First < d && d < s.First + s.Count).Select(s => (s.Source, d, s.First + s.Count - d))];
            var (source, first, count) = near[Math.Min(near.Length - 1, (int)(random.NextUnit() * near.Length))];
            for (var j = 0; j < count && d < days && first + j < sources[source].Hours / 24; j++)
                from[d++] = (source, first + j);
        }

        var name = FormattableString.Invariant($"drawn {number}");
        var drawn = WinterBuilder.Build(
            name, like.Kind, like.Place, like.Start, like.WarmUpHours, Compose(sources, from), like.Ground,
            options,
            [.. like.Remarks, "Drawn: whole spells of the record in a new order."]);
        return LowestDraw.Over(drawn, o => HardLevels.Level(sources, o), o => HardLevels.Of(sources, drawn, o), number, seed, options);
    }

    // Runs of days on one side of the mean of the four weeks around them.
    private static IEnumerable<(int First, int Count)> SpellsOf(Winter winter)
    {
        var means = winter.AirC.Chunk(24).Select(d => d.Average()).ToArray();
        var cold = means.Select((m, d) => m < means[Math.Max(0, d - 14)..Math.Min(means.Length, d + 15)].Average()).ToArray();
        for (var first = 0; first < cold.Length;)
        {
            var after = first + 1;
            while (after < cold.Length && cold[after] == cold[first])
                after++;
            yield return (first, after - first);
            first = after;
        }
    }

    private static HourWeather Compose(IReadOnlyList<Winter> sources, (int Source, int Day)[] from)
    {
        var like = sources[0];
        var hours = from.Length * 24;
        double[] Take(Func<Winter, double[]> of)
        {
            var taken = new double[hours];
            for (var h = 0; h < hours; h++)
                taken[h] = of(sources[from[h / 24].Source])[24 * from[h / 24].Day + h % 24];
            return taken;
        }

        var (air, dew) = (Take(w => w.AirC), Take(w => w.DewPointC));
        for (var d = 1; d < from.Length; d++)
        {
            if (from[d].Source != from[d - 1].Source || from[d].Day != from[d - 1].Day + 1)
                Smooth(air, 24 * d);
        }

        var above = Above(like, hours);
        var ownAbove = sources.Select(w => Above(w, w.Hours)).ToArray();
        var scale = Enumerable.Range(0, hours).Select(h =>
        {
            var own = ownAbove[from[h / 24].Source][24 * from[h / 24].Day + h % 24];
            return own > 20 ? Math.Min(1.5, above[h] / own) : above[h] > 0 ? 1 : 0;
        }).ToArray();
        var global = Take(w => w.GlobalWPerM2).Zip(scale, (g, s) => g * s).ToArray();
        var diffuse = Take(w => w.DiffuseWPerM2).Zip(scale, (g, s) => g * s).ToArray();
        for (var h = 0; h < hours; h++)
            dew[h] = Math.Min(dew[h], air[h]);
        var beams = sources.ToDictionary(w => w, WinterBuilder.OwnBeam);
        return new(air, dew, Take(w => w.WindMPerS), global, diffuse, Take(w => w.SkyC).Select(SkyTemperature.LongWave).ToArray())
        {
            BeamNormalWPerM2 = Take(w => beams[w]),
        };
    }

    // The step between two spells is spread over the hours around it.
    private static void Smooth(double[] air, int seam)
    {
        var step = air[seam] - air[seam - 1];
        for (var j = 0; j < SeamHours; j++)
        {
            var share = 0.5 * (1 - (j + 0.5) / SeamHours) * step;
            if (seam - 1 - j >= 0)
                air[seam - 1 - j] += share;
            if (seam + j < air.Length)
                air[seam + j] -= share;
        }
    }

    private static double[] Above(Winter winter, int hours)
    {
        var place = winter.Place;
        var utc = winter.Start.AddHours(-place.ZoneHours);
        var sun = new SunTrack(place, utc, utc.AddHours(hours));
        return [.. Enumerable.Range(0, hours).Select(h => sun.MeanHorizontal(utc.AddHours(h), 60, 4))];
    }
}
