using System.Globalization;
using System.Text;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>Draws a week as bands over one another on one axis of time: temperatures, the tank with its pump, the sun, the stand-by heater.</summary>
internal static class WeekChart
{
    private const int MostSteps = 12;
    private const double Left = 46;
    private const double Right = 12;
    private const double Head = 20;
    private const double Gap = 14;
    private const double Foot = 24;
    private const double TallBand = 190;
    private const double LowBand = 64;

    /// <summary>The drawing.</summary>
    /// <param name="week">The week.</param>
    /// <param name="limitC">Frost limit [°C].</param>
    /// <param name="width">Width in units of about a pixel.</param>
    /// <param name="name">Start of the identifiers in it.</param>
    /// <param name="finding">What it shows, in a sentence.</param>
    public static Markup Of(Week week, double limitC, double width, string name, string finding)
    {
        var hours = week.Hours;
        var bands = new List<Markup>();
        var top = 0.0;
        var temperatures = hours.SelectMany(h => new[] { h.OutsideC, h.AirC, h.BareAirC }).Append(limitC).ToList();
        var (low, high) = (5 * Math.Floor(temperatures.Min() / 5), 5 * Math.Ceiling(temperatures.Max() / 5));
        var isNarrow = width < 500;
        var inside = week.Plants is { } place ? isNarrow ? place.Brief : place.Where : "inside";
        var key = Key([("inside", inside), ("outside", "outside"), ("bare", isNarrow ? "bare" : "bare house")]);
        Band(isNarrow ? "°C" : "temperature, °C", TallBand, low, high, Temperatures, key);
        if (hours.Any(h => double.IsFinite(h.TankC)))
        {
            var (cold, hot) = (10 * Math.Floor(hours.Min(h => h.TankC) / 10), 10 * Math.Ceiling(hours.Max(h => h.TankC) / 10));
            Markup Tank(Func<double, double> scale) =>
                Markup.Of($"""<path class="tank" d="{Line(h => h.TankC, scale)}"/>{Pump(scale(cold))}""");
            Band("tank, °C", LowBand, cold, Math.Max(hot, cold + 10), Tank, Key([("pump", "pump runs")]));
        }

        Band("sun, W/m²", LowBand, 0, Math.Max(100, ToHundreds(hours.Max(h => h.SunWPerM2))), Sun, Markup.None);
        if (hours.Any(h => h.HeaterW > 0))
            Band("electric heat, W", LowBand, 0, ToHundreds(hours.Max(h => h.HeaterW)), Heater, Markup.None);
        var days = Enumerable.Range(0, (hours.Count / 24) + 1).Select(d => Markup.Of($"""<path class="day" d="M{X(24 * d)} 4V{top}"/>"""));
        string Day(int day) => week.Start.AddDays(day).ToString(isNarrow ? "%d" : "d MMM", CultureInfo.InvariantCulture);
        var dates = Enumerable.Range(0, hours.Count / 24)
            .Select(d => Markup.Of($"""<text x="{X((24 * d) + 12)}" y="{top + 17}" text-anchor="middle">{Day(d)}</text>"""));
        return Markup.Of($"""
            <svg class="week" viewBox="0 0 {width} {top + Foot}" role="img" aria-labelledby="{name}-title">
            <title id="{name}-title">{finding}</title>
            {days}{bands}{dates}</svg>

            """);

        static double ToHundreds(double value) => 100 * Math.Ceiling(value / 100);

        Markup Temperatures(Func<double, double> scale)
        {
            var right = width - Right;
            var words = Markup.Of($"""<text x="{right - 3}" y="{scale(limitC) + 12}" text-anchor="end">limit</text>""");
            var (bare, outside) = (Line(h => h.BareAirC, scale), Line(h => h.OutsideC, scale));
            return Markup.Of($"""
                <path class="limit" d="M{Left} {scale(limitC)}H{right}"/>{words}
                <path class="bare" d="{bare}"/><path class="outside" d="{outside}"/><path class="inside" d="{Line(h => h.AirC, scale)}"/>
                """);
        }

        Markup Sun(Func<double, double> scale) => Markup.Of($"""<path class="sun" d="{Area(h => h.SunWPerM2, scale)}"/>""");

        Markup Heater(Func<double, double> scale) => Markup.Of($"""<path class="heater" d="{Area(h => h.HeaterW, scale)}"/>""");

        double X(double hour) => Left + (hour / hours.Count * (width - Left - Right));

        void Band(string title, double tall, double from, double to, Func<Func<double, double>, Markup> draw, Markup key)
        {
            var (start, end) = (top + Head, top + Head + tall);
            double Scale(double value) => end - ((value - from) / (to - from) * tall);
            var step = tall == TallBand ? 5 * Math.Max(1, Math.Ceiling((to - from) / 40)) : to - from;
            var ticks = new List<Markup>();
            // Counted, since a figure so large that a step no longer changes it would never be passed.
            var steps = step > 0 ? (int)Math.Min(MostSteps, Math.Floor(((to - from) / step) + 1e-9)) : 0;
            foreach (var v in Enumerable.Range(0, steps + 1).Select(i => from + (i * step)))
            {
                ticks.Add(Markup.Of($"""<path class="grid" d="M{Left} {Scale(v)}H{width - Right}"/>"""));
                ticks.Add(Markup.Of($"""<text x="{Left - 5}" y="{Scale(v) + 4}" text-anchor="end">{Say.Plain(v)}</text>"""));
            }

            var name = Markup.Of($"""<text class="name" x="{Left}" y="{start - 6}">{title}</text>""");
            var lines = Markup.Of($"""<g transform="translate({width - Right} {start - 6})">{key}</g>""");
            bands.Add(Markup.Of($"<g>{ticks}{name}{lines}{draw(Scale)}</g>"));
            top = end + Gap;
        }

        string Line(Func<WeekHour, double> of, Func<double, double> scale)
        {
            var path = new StringBuilder();
            for (var i = 0; i < hours.Count; i++)
                path.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{X(i + 0.5):0.#} {scale(of(hours[i])):0.#}");
            return path.ToString();
        }

        string Area(Func<WeekHour, double> of, Func<double, double> scale)
        {
            var path = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"M{X(0):0.#} {scale(0):0.#}"));
            for (var i = 0; i < hours.Count; i++)
                path.Append(CultureInfo.InvariantCulture, $"V{scale(of(hours[i])):0.#}H{X(i + 1):0.#}");
            return path.Append(CultureInfo.InvariantCulture, $"V{scale(0):0.#}Z").ToString();
        }

        Markup Pump(double floor)
        {
            Markup Hour(int i) => Markup.Of(
                $"""<rect class="pump" x="{X(i)}" y="{floor - 7}" width="{X(1) - X(0)}" height="{7 * hours[i].PumpShare}"/>""");
            return Markup.All(Enumerable.Range(0, hours.Count).Where(i => hours[i].PumpShare > 0).Select(Hour));
        }

        // From the right: a sample of each line with its word.
        Markup Key(IReadOnlyList<(string Class, string Word)> entries)
        {
            var right = 0.0;
            var pieces = new List<Markup>();
            foreach (var (line, word) in entries.Reverse())
            {
                var wide = 7.2 * word.Length;
                pieces.Add(Markup.Of($"""<path class="{line}" d="M{right - wide - 26} -4h20"/><text x="{right - wide}" y="0">{word}</text>"""));
                right -= wide + 40;
            }

            return Markup.All(pieces);
        }
    }
}
