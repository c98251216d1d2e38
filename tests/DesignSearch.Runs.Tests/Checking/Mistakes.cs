namespace DesignSearch.Runs.Tests;

/// <summary>One mistake that a person makes who fills in a case.</summary>
/// <param name="What">What was done.</param>
/// <param name="From">What stood there.</param>
/// <param name="To">What stands there now.</param>
/// <param name="Told">A part of the sentence that mends it.</param>
/// <param name="At">Words of the line at which it is told; null for the first line of what stands there now.</param>
internal sealed record Mistake(string What, string From, string To, string Told, string? At = null)
{
    /// <inheritdoc/>
    public override string ToString() => What;
}

/// <summary>A hundred of them: those that were tried when the program was first used by someone who had never seen it, and as many again.</summary>
internal static class Mistakes
{
    private const string Latitude = "latitude_deg = 46.3            # south of the equator: negative";
    private const string Air = "mean_air_c = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7, -1.7]";
    private const string Sun = "sun_kwh_per_m2_day = [1.75, 2.70, 3.90, 4.70, 5.60, 6.10, 6.30, 5.50, 4.20, 2.80, 1.80, 1.45]";
    private const string Wind = "wind_m_per_s = [1.4, 1.6, 1.9, 2.1, 1.9, 1.8, 1.7, 1.6, 1.5, 1.4, 1.5, 1.4]";
    private const string Heading = "[greenhouse]";

    /// <summary>Told as one fault in scenario.toml.</summary>
    public static IReadOnlyList<Mistake> InScenario { get; } =
    [
        new("decimal comma", Latitude, "latitude_deg = 46,3", "(write 46.3)"),
        new("decimal comma before a remark", "length_m = 5.0", "length_m = 5,0 # along the ridge", "(write 5)"),
        new("thousands apart", "budget = 4200", "budget = 4 200", "(write 4200, without anything between the digits)"),
        new("apostrophe between thousands", "budget = 4200", "budget = 4'200", "(write 4200, without anything between the digits)"),
        new("point and comma", "budget = 4200", "budget = 4.200,00", "(write 4200"),
        new("sign behind the money", "budget = 4200", "budget = 4200 €", "(write 4200, without sign)"),
        new("sign before the money", "budget = 4200", "budget = $4200", "(write 4200, without sign)"),
        new("code behind the money", "budget = 4200", "budget = 4200 EUR", "(write 4200, without sign)"),
        new("money in quotes", "budget = 4200", "budget = \"4200 €\"", "(write 4200, without quotes and sign)"),
        new("number in quotes", "elevation_m = 640", "elevation_m = \"640\"", "(write 640, without quotes)"),
        new("unit behind the number", "width_m = 3.0", "width_m = 3.0 m", "(write 3 alone, without 'm')"),
        new("percent", "interest = 0.03", "interest = 3 %", "(write 3, without sign)"),
        new("share as percent", "interest = 0.03", "interest = 3", "as a share a year (0.04 is 4 %)"),
        new("light as percent", "cover_light = 0.74", "cover_light = 74", "from 0.2 to 0.95 as a share"),
        new("centimetres", "width_m = 3.0", "width_m = 300", "from 1 to 20 m"),
        new("typographic minus", "lowest_known_c = -18.5", "lowest_known_c = −18.5", "(write -18.5)"),
        new("point first", "cover_light = 0.74", "cover_light = .74", "(write 0.74)"),
        new("zero first", "mains_cable_m = 85", "mains_cable_m = 085", "(write 85)"),
        new("yes", "mains_at_greenhouse = false", "mains_at_greenhouse = yes", "(write true)"),
        new("no", "mains_at_greenhouse = false", "mains_at_greenhouse = no", "(write false)"),
        new("capital letters", "mains_at_greenhouse = false", "mains_at_greenhouse = False", "(write false)"),
        new("yes in quotes", "mains_at_greenhouse = false", "mains_at_greenhouse = \"yes\"", "(write true, without quotes)"),
        new("no answer", "mains_at_greenhouse = false", "mains_at_greenhouse =", "a value behind the ="),
        new("words without quotes", "currency = \"crowns\"", "currency = crowns", "between double quotes: \"crowns\""),
        new("several words without quotes", "place = \"Frost Hollow (invented)\"", "place = By the sea", "between double quotes: \"By the sea\""),
        new("closing quote forgotten", "currency = \"crowns\"", "currency = \"crowns", "one more of these quotes"),
        new("opening quote forgotten", "currency = \"crowns\"", "currency = crowns\"", "a quote in front"),
        new("closing quote of the name forgotten", "name = \"Sample, finished\"", "name = \"Sample, finished", "one more of these quotes"),
        new("closing quote in a list forgotten", "lining = [\"none\", \"bubble-lining-large\"]", "lining = [\"none\", \"bubble-lining-large]", "one more of these quotes"),
        new("three quotes forgotten", "every price is made up.\"\"\"", "every price is made up.", "three more of these quotes", "description ="),
        new("quotes of a word processor", "currency = \"crowns\"", "currency = “crowns”", "plain double quotes"),
        new("closing bracket forgotten", "barrel_count = [2, 4, 6]", "barrel_count = [2, 4, 6", "a ] that closes this bracket"),
        new("closing brace forgotten", "barrel_count = [2, 4, 6]", "barrel_count = { from = 2, to = 6, step = 2", "a } that closes this brace"),
        new("commas in a list forgotten", "barrel_count = [2, 4, 6]", "barrel_count = [2 4 6]", "commas between the values"),
        new("bracket of a heading forgotten", Heading, "[greenhouse", "a heading in brackets"),
        new("blank in a heading", Heading, "[green house]", "a heading in brackets"),
        new("heading twice", Heading, "[site]\n[greenhouse]", "each heading once; [site] stands in line"),
        new("key twice", "width_m = 3.0", "width_m = 3.0\nwidth_m = 4.0", "'width_m' stands in line", "width_m = 4.0"),
        new("remark without its sign", Heading, "the house stands behind the shed\n[greenhouse]", "a # in front of a remark"),
        new("remark behind a number without its sign", "eaves_m = 1.9", "eaves_m = 1.9 up to the gutter", "a # in front of the remark"),
        new("remark behind words without its sign", "currency = \"crowns\"", "currency = \"crowns\" not pounds", "a # in front of the remark"),
        new("colon for the sign", "eaves_m = 1.9", "eaves_m: 1.9", "an = between"),
        new("no sign", "eaves_m = 1.9", "eaves_m 1.9", "an = between"),
        new("blank in a key", "eaves_m = 1.9", "eaves m = 1.9", "a # in front of a remark"),
        new("backslash in a path", "[site]", "stock = \"C:\\my\\stock.csv\"\n[site]", "/ in place of \\"),
        new("latitude left out", Latitude, "", "'latitude_deg' in [site]: a number from -66 to 66", "[site]"),
        new("budget left out", "budget = 4200", "", "'budget' in [money]", "[money]"),
        new("currency left out", "currency = \"crowns\"", "", "'currency' in [money]: words in quotes", "[money]"),
        new("length left out", "length_m = 5.0", "", "'length_m' in [greenhouse]", "[greenhouse]"),
        new("catalogues left out", "catalogs = [", "# catalogs = [", "'catalogs': a list of catalogues", "# A small finished run"),
        new("format left out", "format = 1", "", "'format': the number 1", "# A small finished run"),
        new("means of the sun left out", Sun, "", "'sun_kwh_per_m2_day' in [climate]: twelve numbers", "[climate]"),
        new("slip in a key", "frost_limit_c = 2.0", "frostlimit_c = 2.0", "did you mean 'frost_limit_c'?"),
        new("key without its unit", "elevation_m = 640", "elevation = 640", "did you mean 'elevation_m'?"),
        new("slip in a required key", "budget = 4200", "budgte = 4200", "did you mean 'budget'?"),
        new("key under the wrong heading", "frost_limit_c = 2.0", "frost_limit_c = 2.0\nbudget_c = 3", "a known key in [greenhouse]", "budget_c"),
        new("slip in a heading", "[season]", "[seeson]", "did you mean 'season'?"),
        new("unknown kind of house", "[greenhouse]", "[greenhouse]\nkind = \"palace\"", "known key", "kind = \"palace\""),
        new("day first", "start = \"11-01\"", "start = \"01.11.\"", "\"11-01\" for the first of November"),
        new("day and month exchanged", "end = \"03-31\"", "end = \"31-03\"", "a day as month-day"),
        new("day without quotes", "end = \"03-31\"", "end = 03-31", "between double quotes: \"03-31\""),
        new("month by name", "end = \"03-31\"", "end = \"31 March\"", "a day as month-day"),
        new("season of three days", "end = \"03-31\"", "end = \"11-03\"", "a season of 14 days or more"),
        new("eleven months", Air, "mean_air_c = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7]", "a list of 12 numbers, found 11"),
        new("decimal commas in a list", "humidity_pct = [80, 76, 70, 68, 70, 71, 71, 74, 78, 81, 83, 83]", "humidity_pct = [80,1, 76,1, 70,1, 68,1, 70,1, 71,1, 71,1, 74,1, 78,1, 81,1, 83,1, 83,1]", "with decimal points"),
        new("sun as sums of months", Sun, "sun_kwh_per_m2_day = [54, 76, 121, 141, 174, 183, 195, 171, 126, 87, 54, 45]", "a month's sum divided by its days"),
        new("wind in km/h in a windy place", Wind, "wind_m_per_s = [25, 26, 24, 22, 21, 20, 19, 20, 22, 24, 25, 25]", "from 0.1 to 20 m/s"),
        new("lows above the means", "mean_daily_low_c = [-8.1,", "mean_daily_low_c = [-1.1,", "at least 1 K below the mean air of month 1"),
        new("latitude of no place", Latitude, "latitude_deg = 146.3", "from -66 to 66"),
        new("zone in minutes", "zone_hours = 1 ", "zone_hours = 60 ", "from -12 to 14 h"),
        new("ridge below the eaves", "ridge_m = 2.7", "ridge_m = 1.7", "a ridge above the eaves"),
        new("feet", "eaves_m = 1.9", "eaves_m = 6.2", "from 0.3 to 6 m"),
        new("seven directions", "horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", "horizon_deg = [0, 4, 8, 6, 3, 7, 9]", "a list of 8 numbers, found 7"),
        new("slip in a part", "lining = [\"none\", \"bubble-lining-large\"]", "lining = [\"none\", \"buble-lining-large\"]", "did you mean 'bubble-lining-large'?"),
        new("part of another kind", "heater_set_c = 4", "heater_set_c = 4\nbench = \"barrel-200-used\"", "the id of a bench in the catalogue", "bench ="),
        new("thermostat of a furnace", "heater_set_c = 4", "heater_set_c = 400", "from 0 to 25 °C"),
        new("range upside down", "barrel_count = [2, 4, 6]", "barrel_count = { from = 6, to = 2, step = 2 }", "'to' not below 'from'"),
        new("unknown kind of winter", "kind = \"hard\"", "kind = \"arctic\"", "one of \"typical\", \"drawn\", \"hard\""),
        new("wrong price level", "interest = 0.03", "interest = 0.03\nprice_level = \"cheap\"", "one of \"usual\", \"low\"", "price_level"),
        new("half an evaluation", "ranked = 6", "ranked = 1.5", "a whole number from 1 to 100"),
        new("catalogue that is nowhere", "/catalogs/starter\"]", "/catalogs/startre\"]", "a folder of catalogue files; there is none of this name"),
    ];

    /// <summary>Told as one fault in a file of the catalogue: the file, and a mistake in it.</summary>
    public static IReadOnlyList<(string File, Mistake Mistake)> InCatalogue { get; } =
    [
        ("barrels.csv", new("sign behind a price", "piece,22.00,", "piece,22.00 €,", "(write 22, without sign)", "barrel-200-used")),
        ("barrels.csv", new("price of a guess", "piece,22.00,", "piece,ca. 22,", "(write 22, without words)", "barrel-200-used")),
        ("barrels.csv", new("price in quotes with a comma", "piece,22.00,", "piece,\"22,00\",", "(write 22)", "barrel-200-used")),
        ("barrels.csv", new("decimal comma between commas", "piece,22.00,", "piece,22,00,", "numbers with a decimal point, as 3.20", "barrel-200-used")),
        ("barrels.csv", new("low price above the usual one", ",22.00,12.00,", ",22.00,32.00,", "price_low: at most the usual price", "barrel-200-used")),
        ("barrels.csv", new("thousandths of a cent", "piece,22.00,", "piece,22.005,", "at most two decimals", "barrel-200-used")),
        ("barrels.csv", new("capital letters in an id", "barrel-200-used,", "Barrel-200,", "a short name of small letters", "Barrel-200")),
        ("barrels.csv", new("unknown unit", "used\",piece,22.00", "used\",barrel,22.00", "unit: ", "barrel-200-used")),
        ("barrels.csv", new("slip in a column", ",volume_l,", ",volum_l,", "did you mean 'volume_l'?", "id,name")),
        ("barrels.csv", new("stray quote", "\"Blue barrel 200 L", "\"Blue \"barrel 200 L", "double quote", "barrel-200-used")),
    ];

    /// <summary>Told as one fault in stock.csv: its text, its line.</summary>
    public static IReadOnlyList<(int Line, Mistake Mistake)> InStock { get; } =
    [
        (2, new("unit behind an amount", "", "id,quantity\npex-25,12 m\n", "quantity: a number from 0")),
        (2, new("slip in an id", "", "id,quantity\nbarel-200-used,4\n", "did you mean 'barrel-200-used'?")),
        (3, new("part twice", "", "id,quantity\npex-25,12\npex-25,3\n", "each part once")),
        (1, new("slip in a column of the stock", "", "id,quantty\npex-25,12\n", "did you mean 'quantity'?")),
    ];

    /// <summary>Read, and doubted in the read-back.</summary>
    public static IReadOnlyList<Mistake> Doubted { get; } =
    [
        new("point between thousands", "budget = 4200", "budget = 4.200", "Was 4200 meant?"),
        new("height with a point", "elevation_m = 640", "elevation_m = 1.640", "Was 1640 meant?"),
        new("wind in km/h", Wind, "wind_m_per_s = [18, 17, 16, 14, 13, 12, 12, 13, 15, 16, 17, 18]", "Was it in km/h?"),
        new("latitude and longitude exchanged", Latitude + "\nlongitude_deg = 13.9 ", "latitude_deg = 13.9\nlongitude_deg = 46.3 ", "Are latitude and longitude exchanged?"),
        new("south written as north", Latitude, "latitude_deg = -46.3", "South of the equator latitude_deg is negative"),
        new("sun in MJ", Sun, "sun_kwh_per_m2_day = [6.3, 9.7, 9.9, 9.9, 9.9, 9.9, 9.9, 9.9, 9.9, 9.9, 6.5, 5.2]", "MJ/m² by 3.6"),
        new("season of the summer", "start = \"11-01\"\nend = \"03-31\"", "start = \"05-01\"\nend = \"09-30\"", "leaves out January"),
        new("thermostat below the limit", "heater_set_c = 4", "heater_set_c = 1", "starts when it is too late"),
        new("thermostat far above the limit", "heater_set_c = 4", "heater_set_c = 15", "kept warmer than the plants need"),
    ];
}
