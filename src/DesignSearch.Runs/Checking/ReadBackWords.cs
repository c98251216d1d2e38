using System.Globalization;
using DesignSearch.Climate;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Benches;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Checking;

/// <summary>The lines in which a case is read back.</summary>
internal static class ReadBackWords
{
    private const double KmPerHour = 3.6;
    private const double WattsPerKilowatt = 1000;
    private const int NightHours = 12;
    private const double Percent = 100;

    public static string Place(Place place) => Written.Sentence(
        $"Place     {place.Name}, {Math.Abs(place.LatitudeDeg):0.0##}° {(place.LatitudeDeg < 0 ? "south" : "north")}",
        $"{Math.Abs(place.LongitudeDeg):0.0##}° {(place.LongitudeDeg < 0 ? "west" : "east")},",
        $"{place.ElevationM:0} m above the sea, clock UTC{Zone(place.ZoneHours)}");

    public static string Sun(double noonDeg, double latitudeDeg, double horizonDeg) => Written.Sentence(
        $"Sun       at noon in {(latitudeDeg < 0 ? "June" : "December")} {noonDeg:0}° high in the {(latitudeDeg < 0 ? "north" : "south")};",
        $"hills and trees there {horizonDeg:0}°{(horizonDeg > noonDeg ? ": they hide it" : "")}");

    public static string House(Greenhouse house) => Written.Sentence(
        $"House     {house.LengthM:0.0#} × {house.WidthM:0.0#} m: {house.FloorM2:0.0} m² of floor, {house.VolumeM3:0} m³ of air;",
        $"{ShapeBackWords.Runs(house)} {Direction(house.RidgeAzimuthDeg)}");

    public static string Loss(Greenhouse house, double lossWPerK, double byLabelsWPerK, double roomW, double lowestC) => Written.Sentence(
        $"Cover     {house.CoverM2:0} m², {U(house)}, lets {Percent * house.MeanCoverLight:0} % of the light in.",
        $"The bare house loses about {lossWPerK:0} W per degree in a clear, frosty night ({byLabelsWPerK:0} by its labels alone):",
        $"{Math.Max(0, (lossWPerK * Math.Max(0, house.FrostLimitC - lowestC)) - roomW) / WattsPerKilowatt:0.0} kW in the hardest night",
        $"{(roomW > 0 ? ShapeBackWords.RoomGives(roomW) : "")}").TrimEnd();

    public static string Inside(IReadOnlyList<HouseContents>? contents) => contents switch
    {
        null => "Inside    nothing is said of pots, beds, paving or benches (contents): taken as empty, the safe side",
        [] => "Inside    empty: nothing in it stores the day's heat",
        _ => "Inside    the day's heat is stored by " + Written.Joined([.. contents.Select(c => $"{c.Word} ({c.Where})")]),
    };

    private static string U(Greenhouse house) => house.CoverLongWave > 0
        ? Written.Sentence(
            $"{Written.Count(house.CoverLayers, "film")} through which {Percent * house.CoverLongWave:0} % of heat radiation passes")
        : Written.Sentence($"U {house.MeanCoverUWPerM2K:0.0#} {(house.CoverUIsOfHouse ? "of the whole house" : "of the sheet")}");

    public static string Fitted(HouseFit fit, double drawnWPerK) => Written.Sentence(
        $"Fitted    fitted.toml is in force, from {Written.Count(fit.Nights, "night")} of this house:",
        $"its loss is {fit.Loss.Value:0.00} times the drawing's {drawnWPerK:0} W per degree ({fit.Loss.Low:0.00} to {fit.Loss.High:0.00}),",
        $"its sun {(fit.Sun.IsLearnt ? Written.Sentence($"{fit.Sun.Value:0.00} times") : "is the drawing's")}.",
        $"Delete the file to go back to the drawing");

    public static string Limit(Greenhouse house, SeasonDates season) => Written.Sentence(
        $"To hold   {house.FrostLimitC:0.#} °C {(house.Wish<BenchWish>() is { } bench ? Bench(bench) : "in the whole house")}",
        $"from {season.StartDay} {Name(season.StartMonth)} to {season.EndDay} {Name(season.EndMonth)}");

    public static string Climate(ClimateSource climate)
    {
        var months = climate.Monthly is { } means
            ? means.Months.Select((m, i) => (Month: i + 1, m.MeanC, Sun: m.GhiKwhPerM2Day, Wind: m.WindMPerS)).ToList()
            : climate.Record!.Summary.Months.Select(m => (m.Month, m.MeanC, Sun: m.GhiKwhPerM2Day, Wind: m.MeanWindMPerS)).ToList();
        var (coldest, darkest) = (months.MinBy(m => m.MeanC), months.MinBy(m => m.Sun));
        var wind = months.Average(m => m.Wind);
        return Written.Sentence(
            $"Climate   {(climate.Monthly is null ? "from a weather file" : "twelve means")}:",
            $"coldest {Name(coldest.Month)} with {coldest.MeanC:0.0} °C,",
            $"darkest {Name(darkest.Month)} with {darkest.Sun:0.0#} kWh/m² a day, wind {wind:0.0} m/s ({KmPerHour * wind:0} km/h)");
    }

    public static string HardNight(string winter, double lowestC) =>
        Written.Sentence($"Hardest   night of the winters it is judged on: {lowestC:0.0} °C outside (winter '{winter}')");

    public static string Money(MoneyTerms money) => Written.Sentence(
        $"Money     {money.Budget:0.##} {money.Currency} to build;",
        $"{money.Years} years at {Percent * money.Interest:0.#} % interest{(money.TariffPerKwh > 0 ? ";" + Tariff(money) : "")}");

    public static string Current(SiteLimits site) => site.HasNoMains
        ? "Current   none from the mains: panel and battery give all of it"
        : site.MainsAtGreenhouse ? "Current   mains at the greenhouse"
        : Written.Sentence($"Current   to be brought by {site.MainsCableM:0} m of cable");

    public static string Room(SiteLimits site) => Written.Sentence(
        $"Room      {site.CollectorSpaceM2:0.#} m² for collectors, {site.StoreFloorM2:0.#} m² of floor for tank and barrels,",
        $"{site.PipeRunM:0.#} m of pipe between;",
        $"storm {site.DesignWindMPerS:0} m/s ({KmPerHour * site.DesignWindMPerS:0} km/h)");

    public static string Allowed(Scenario scenario)
    {
        var roots = scenario.Choices.Where(c => c.Choice is PartChoice { IsRoot: true, MayBeNone: true }).ToList();
        var (may, not) = (roots.Where(c => c.Levels.Any(l => !l.IsNone)).ToList(), roots.Where(c => c.Levels.All(l => l.IsNone)).ToList());
        var left = not.Count == 0 ? "" : "; not " + Written.Joined(not.ConvertAll(c => c.Choice.Title));
        var named = may.ConvertAll(c => $"{c.Choice.Title} ({c.Levels.Count(l => !l.IsNone)})");
        return "Allowed   " + (may.Count == 0 ? "nothing" : Written.Joined(named)) + left;
    }

    private static string Tariff(MoneyTerms money) => Written.Sentence(
        $" a kilowatt-hour {money.TariffPerKwh:0.0##},",
        $"so 1 kW through a night of {NightHours} hours {(double)money.TariffPerKwh * NightHours:0.00} {money.Currency}");

    private static string Bench(BenchWish bench) => Written.Sentence($"on a bench of {bench.AreaM2:0.0#} m², or in the whole house");

    private static string Zone(double hours) => (hours < 0 ? "" : "+") + Written.Formatted(hours, "0.##");

    private static string Name(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    private static string Direction(double azimuthDeg) => (Math.Round(azimuthDeg / 45) % 4) switch
    {
        0 => "north and south",
        1 => "north-east and south-west",
        2 => "east and west",
        _ => "south-east and north-west",
    };
}
