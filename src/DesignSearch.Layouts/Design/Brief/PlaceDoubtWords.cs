using System.Globalization;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What is said of monthly means that cannot be true, in plain sentences.</summary>
internal static class PlaceDoubtWords
{
    private const double KmPerHour = 3.6;

    public static string Windy(double windMPerS) => Written.Sentence(
        $"The wind averages {windMPerS:0.0} m/s over the year, more than where people live.",
        $"Was it in km/h? Then divide by 3.6: {windMPerS / KmPerHour:0.0} m/s.");

    public static string TooBright(int month, double sunKwh, double aboveKwh, double latitudeDeg) => Written.Sentence(
        $"{Name(month)} has {sunKwh:0.0} kWh/m² of sun a day, but only {aboveKwh:0.0} fall above the air at {Latitude(latitudeDeg)}.",
        $"A month's sum is divided by its days, MJ/m² by 3.6.");

    public static string TooDark(int month, double sunKwh, double aboveKwh, double latitudeDeg) => Written.Sentence(
        $"{Name(month)} has {sunKwh:0.00} kWh/m² of sun a day where {aboveKwh:0.0} fall above the air at {Latitude(latitudeDeg)}:",
        $"darker than under any sky.");

    public static string TooCold(double meanC, double latitudeDeg, double elevationM) => Written.Sentence(
        $"The coldest month averages {meanC:0.0} °C at {Latitude(latitudeDeg)} and {elevationM:0} m,",
        $"colder than anywhere so near the equator.");

    public static string Swapped(double latitudeDeg, double longitudeDeg) => Written.Sentence(
        $" Are latitude and longitude exchanged?",
        $"With latitude_deg = {longitudeDeg:0.###} and longitude_deg = {latitudeDeg:0.###} it fits.");

    public static string Turned(double latitudeDeg) => Written.Sentence(
        $"The twelve means are warm when {(latitudeDeg > 0 ? "the north" : "the south")} of the world has winter.",
        $"South of the equator latitude_deg is negative, north of it positive; and January comes first.");

    public static string NeverWarms(string key, double setC, double limitC) => Written.Sentence(
        $"{key} is {setC:0.#} °C at most, below frost_limit_c of {limitC:0.#} °C: what it switches starts when it is too late.");

    public static string WarmsTooMuch(string key, double setC, double limitC) => Written.Sentence(
        $"{key} is {setC:0.#} °C at least, {setC - limitC:0.#} K above frost_limit_c: the house is kept warmer than the plants need.");

    private static string Latitude(double latitudeDeg) =>
        Written.Sentence($"{Math.Abs(latitudeDeg):0.#}° {(latitudeDeg < 0 ? "south" : "north")}");

    private static string Name(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);
}
