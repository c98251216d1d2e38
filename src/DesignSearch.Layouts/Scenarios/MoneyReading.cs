using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads [money].</summary>
internal static class MoneyReading
{
    private const double MostPerKwh = 100;
    private const string LicensedKey = "licensed_rate_per_hour";
    private const string TariffKey = "tariff_per_kwh";
    private const int LastHour = 23;

    private static readonly string[] NightKeys = ["night_tariff_per_kwh", "night_from_hour", "night_to_hour"];

    private static readonly (string Word, PriceLevel Level)[] Levels =
    [
        ("usual", PriceLevel.Usual), ("low", PriceLevel.Low), ("high", PriceLevel.High), ("second-hand", PriceLevel.SecondHand),
    ];

    public static MoneyTerms Read(TomlTable? table, bool hasNoMains)
    {
        if (table is null)
            return new MoneyTerms("", 0, 10, 0, 0, null);
        var terms = new MoneyTerms(
            table.Text("currency", 20),
            Cents(table.Number("budget", 0, 1e7)),
            table.Whole("years", 1, 50, 10),
            table.Number("interest", 0, 0.5, "as a share a year (0.04 is 4 %)", 0.03),
            (decimal)table.Number(TariffKey, 0, MostPerKwh, "", hasNoMains ? 0 : null),
            table.Has("build_hours") ? table.Number("build_hours", 1, 10000, "h") : null);
        var word = table.Word("price_level", [.. Levels.Select(l => l.Word)], Levels[0].Word);
        terms = terms with
        {
            Prices = Levels.FirstOrDefault(l => l.Word == word).Level,
            Night = Night(table),
            LabourRatePerHour = Cents(table.Number("labour_rate_per_hour", 0, 10000, "an hour", 0)),
            LicensedRatePerHour = table.Has(LicensedKey) ? Cents(table.Number(LicensedKey, 0, 10000, "an hour")) : null,
        };
        if (hasNoMains)
            NoMains.Refuse(table, [TariffKey, .. NightKeys, LicensedKey]);
        table.ReportUnknown();
        return terms;
    }

    private static NightTariff? Night(TomlTable table)
    {
        var keys = NightKeys;
        if (!keys.Any(table.Has))
            return null;
        var night = new NightTariff((decimal)table.Number(keys[0], 0, MostPerKwh), table.Whole(keys[1], 0, LastHour), table.Whole(keys[2], 0, LastHour));
        if (keys.All(table.Has) && night.HoursPerDay == 0)
            table.FaultAt(keys[2], FormattableString.Invariant($"{night.ToHour}"), $"another hour than '{keys[1]}'");
        return night;
    }

    private static decimal Cents(double amount) => Math.Round((decimal)amount, 2);
}
