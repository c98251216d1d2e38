using DesignSearch.Climate.Stations;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Starting;

/// <summary>What is asked, and how the answer is found.</summary>
internal static class QuestionWords
{
    public const string Guessed = "A guess: the answer was not known when this was asked.";

    public const string Name = "What do you call this case? [words]";
    public const string NameFrom = "Any words; they stand above the report.";

    public const string Place = "Where does it stand? [latitude, longitude in degrees; south and west negative]";
    public const string PlaceFrom =
        "Press long, or click right, on your garden on any map of the net: two numbers such as 57.1, 9.9 "
        + "appear.";
    public const string PlaceExpected = "two numbers such as 57.1, 9.9: latitude -66 to 66, longitude -180 to 180";

    public const string Height = "How high above the sea? [m]";
    public const string HeightFrom = "The same map tells, or a road sign near by. Fifty metres more or less do not matter.";
    public const string HeightExpected = "a number from -400 to 5000";

    public const string Weather = "Have you a weather file, hour by hour, beside the scenario? [its name, or none]";
    public const string WeatherFrom =
        "'weather --at' fetches one from a public service. Without one, twelve means do, and a few questions "
        + "make them.";
    public const string WeatherExpected = "the name of a file, or none";

    public const string StationFrom =
        "The program carries the means of 1 011 stations; 'weather --near' says more about them. The nearer and the more alike "
        + "in height, the better.";
    public const string YesOrNo = "yes or no";

    public const string Months = "Mean of the coldest and of the warmest month? [°C, two numbers]";
    public const string MonthsFrom =
        "Your weather service's climate normals. What is guessed from them here serves a first look: put in "
        + "the twelve means later.";
    public const string MonthsExpected = "two numbers such as -2 18, the colder first";
    public const string MonthsGuessed =
        "Made from the coldest and the warmest month and the sky: put in the means of a station near you "
        + "(the guide, part 3).";

    public const string Skies = "What is the winter sky like? [dull, usual or sunny]";
    public const string SkiesFrom = "Dull: grey for weeks, as on a misty coast. Sunny: clear most days, as on a dry height.";
    public const string SkiesExpected = "dull, usual or sunny";

    public const string Wind = "How does the wind get at it? [sheltered, open or coast]";
    public const string WindFrom =
        "Sheltered: houses or trees on all sides. Coast: within sight of the sea, or on a ridge. It sets "
        + "mean wind and storm.";
    public const string WindExpected = "sheltered, open or coast";

    public const string Floor = "Length along the ridge and width? [m x m]";
    public const string FloorFrom = "A tape measure, outside.";
    public const string FloorExpected = "two numbers such as 5 x 3: 1 to 60 and 1 to 20";

    public const string Heights = "Height of the eaves and of the ridge? [m, two numbers]";
    public const string HeightsFrom =
        "From the floor to where the roof begins, and to its top. Measure from a firm stand, not from the "
        + "frame.";
    public const string HeightsExpected = "two numbers such as 1.9 2.7: the ridge above the eaves, at most 10";

    public const string Ridge = "Where does the ridge run to? [degrees clockwise from true north: 0 north-south, 90 east-west]";
    public const string RidgeFrom = "The shadow of a plumb line in the middle of the sun's day lies north and south.";
    public const string RidgeExpected = "a number from 0 to 360";

    public const string Cover = "What covers it? [film, glass, twin-4, twin-6, twin-10 or triple-16: wall sheets by their millimetres]";
    public const string CoverFrom =
        "Look at a cut edge: one skin, two with bars between, or three. Its data sheet's figures can be put "
        + "in later.";
    public const string CoverExpected = "film, glass, twin-4, twin-6, twin-10 or triple-16";

    public const string Leaks = "How often is the air renewed with all shut and no wind? [times an hour]";
    public const string LeaksFrom = "0.5 to 1 for tight sheets, 1.5 to 4 for lapped old glass.";
    public const string LeaksExpected = "a number from 0.1 to 20";

    public const string Limit = "The coldest that the plants may get? [°C]";
    public const string LimitFrom =
        "0 is only just alive, 2 to 3 free of frost, 5 to 7 for tender plants. Each step of 2 or 3 costs "
        + "about as much again.";
    public const string LimitExpected = "a number from -10 to 20";

    public const string Bench = "Is a bench enough for all that must live? [its area in m², 0 for no]";
    public const string BenchFrom = "A bench under fleece is heated with a tenth of the current; the rest of the house freezes.";
    public const string BenchExpected = "a number from 0 to 50, no larger than the floor";

    public const string Mains = "Is there current? [here, none, or the metres of trench from the fuse board]";
    public const string MainsFrom =
        "Here: a proper outlet in the greenhouse. None: no mains, and none can be brought. Mains in a wet "
        + "place is licensed work.";
    public const string MainsExpected = "here, none, or a number of metres from 1 to 500";

    public const string Prices = "Which prices do you pay? [usual, low, high or second-hand]";
    public const string PricesFrom =
        "The starter catalogue's prices are invented. Low: you shop around. Second-hand: where something "
        + "used can be trusted.";
    public const string PricesExpected = "usual, low, high or second-hand";

    public const string Budget = "What may building cost at most? [amount and currency, such as 1500 euro]";
    public const string BudgetFrom = "What you could spend without regret. The report says what a little more would buy.";
    public const string BudgetExpected = "an amount and a word, such as 1500 euro, without a sign";

    public const string Tariff = "What does a kilowatt-hour cost? [the same currency]";
    public const string TariffFrom = "Your last bill: the sum divided by the kilowatt-hours.";
    public const string TariffExpected = "a number from 0 to 100, such as 0.35";

    public static string Station(Station station, double latitudeDeg, double longitudeDeg, double elevationM) => Written.Sentence(
        $"Twelve means of {station.Place.Name}, {station.DistanceKm(latitudeDeg, longitudeDeg):0} km off and",
        $"{Beside(station.Place.ElevationM - elevationM)}, come with the program: take them? [yes or no]");

    public static string OfStation(Station station, double latitudeDeg, double longitudeDeg) => Written.Sentence(
        $"Of {station.Place.Name}, {station.DistanceKm(latitudeDeg, longitudeDeg):0} km off, its height reckoned in.",
        $"So far apart winter lows differ by {StationWorth.At(station.DistanceKm(latitudeDeg, longitudeDeg))!.LowK:0.0} K.",
        $"{StationTable.Credit}; {StationTable.Licence}.");

    private static string Beside(double higherM) => Math.Abs(higherM) < 1 ? "as high"
        : Written.Sentence($"{Math.Abs(higherM):0} m {(higherM > 0 ? "higher" : "lower")}");

    public static readonly string[] FloorPicture =
    [
        "     ___________",
        "    /          /\\",
        "   /  length  /  \\",
        "  /__________/____\\",
        "             width",
    ];

    public static readonly string[] HeightsPicture =
    [
        "      /\\   . ridge",
        "     /  \\",
        "    |    | . eaves",
        "    |____| . floor",
    ];

    public static readonly string[] RidgePicture =
    [
        "       0 north",
        "         |",
        "  270 ---+--- 90 east",
        "         |",
        "        180",
    ];
}
