using System.Text.RegularExpressions;
using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

/// <summary>What a part is rated for and what it runs on, against the cells of the starter catalogue as they stand in its files.</summary>
public sealed partial class RatingTests
{
    // A check asks a part by what it bears; these are the columns that say it. Nothing else may answer.
    private static readonly Dictionary<string, (Rating Rating, string Column)[]> Rated = new(StringComparer.Ordinal)
    {
        ["antifreezes.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["batteries.csv"] = [(Rating.CurrentA, "most_a")],
        ["battery-fuses.csv"] = [(Rating.CurrentA, "rated_a"), (Rating.BreakingA, "breaks_a"), (Rating.VoltageV, "most_v")],
        ["cables.csv"] = [(Rating.CurrentA, "rated_a")],
        ["charge-controllers.csv"] = [(Rating.CurrentA, "rated_a"), (Rating.VoltageV, "most_v")],
        ["collectors.csv"] = [(Rating.PressureBar, "max_bar")],
        ["compost-coils.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["expansion-vessels.csv"] = [(Rating.TemperatureC, "max_temperature_c"), (Rating.PressureBar, "max_bar")],
        ["freeze-protections.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["holdfasts.csv"] = [(Rating.TorqueNm, "holds_n")],
        ["panel-brackets.csv"] = [(Rating.ForceN, "holds_n")],
        ["pipe-insulations.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["pipes.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["pumps.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["releases.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["relief-valves.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["small-parts.csv"] = [(Rating.TemperatureC, "max_temperature_c"), (Rating.CurrentA, "rated_a"), (Rating.VoltageV, "volts"), (Rating.IpCode, "ip")],
        ["solar-controllers.csv"] = [(Rating.CurrentA, "rated_a")],
        ["tank-jackets.csv"] = [(Rating.TemperatureC, "max_temperature_c")],
        ["tanks.csv"] = [(Rating.TemperatureC, "max_temperature_c"), (Rating.PressureBar, "max_bar")],
    };

    [Fact]
    public void Each_part_bears_what_its_row_says_and_nothing_else()
    {
        foreach (var (part, cell) in Rows())
        {
            foreach (var rating in Enum.GetValues<Rating>())
            {
                var column = Rated.GetValueOrDefault(part.Kind.File, []).FirstOrDefault(r => r.Rating == rating).Column;
                var isRated = column is not null && PlainNumber.TryRead(cell(column), out var figure) && (figure != 0 || rating == Rating.IpCode);
                var expected = isRated && PlainNumber.TryRead(cell(column!), out var value) ? value : (double?)null;
                if (part.Kind.File == "holdfasts.csv" && expected is { } holds)
                    expected = cell("form") is "stops" or "hand-bolt" or "spring-bolt" && PlainNumber.TryRead(cell("arm_m"), out var arm) ? holds * arm : null;
                Assert.True(expected == part.Bears(rating), $"{part.Id}: {rating} is {part.Bears(rating)}, the row says {expected}");
            }
        }
    }

    // IEC 60050-826: direct voltage is extra-low up to 120 V, so 230 V is the mains.
    [Fact]
    public void A_part_runs_on_mains_where_its_row_has_more_than_extra_low_voltage()
    {
        foreach (var (part, cell) in Rows().Where(r => r.Part.Kind.File is not ("cables.csv" or "small-parts.csv" or "holdfasts.csv")))
        {
            var isMains = (PlainNumber.TryRead(cell("volts"), out var volts) && volts > 120 && cell("max_volts").Length == 0)
                || cell("needs_mains") == "yes" || cell("battery") == "no";
            Assert.True(isMains == part.RunsOnMains, $"{part.Id}: {part.RunsOnMains}");
        }
    }

    [Fact]
    public void A_hundred_and_twenty_volts_direct_and_fifty_alternating_are_extra_low_and_no_more() =>
        Assert.Equal(
            (true, false, true, false),
            (ExtraLowVoltage.Includes(120, false), ExtraLowVoltage.Includes(120.1, false), ExtraLowVoltage.Includes(50, true), ExtraLowVoltage.Includes(50.1, true)));

    // Whoever breaks a rule between cells is led to a cell that is there.
    [Fact]
    public void Each_rule_of_a_row_names_a_column_of_its_file_and_what_it_asks() =>
        Assert.All(
            Rows().SelectMany(r => r.Part.Rules.Select(rule => (r.Part, Rule: rule))),
            r =>
            {
                Assert.Contains(r.Rule.Column, r.Part.Kind.Columns.Select(c => c.Name));
                Assert.True(r.Rule.IsMet && r.Rule.Expected.Length > 0, r.Part.Id + ": " + r.Rule.Column);
            });

    private static IEnumerable<(IPart Part, Func<string, string> Cell)> Rows()
    {
        var folder = Repository.At("catalogs", "starter");
        var faults = new FaultList();
        var catalogue = Catalogue.Load([folder], Kinds.All, faults);
        faults.ThrowIfAny();
        foreach (var kind in Kinds.All)
        {
            var lines = File.ReadLines(Path.Combine(folder, kind.File)).Where(l => l.Length > 0 && l[0] != '#').Select(l => BetweenCells().Split(l)).ToList();
            foreach (var row in lines.Skip(1))
            {
                Assert.True(catalogue.TryFind<IPart>(row[0], out var part));
                yield return (part, column => Array.IndexOf(lines[0], column) is >= 0 and var at ? row[at] : "");
            }
        }
    }

    // A comma with an even number of quotes behind it.
    [GeneratedRegex(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")]
    private static partial Regex BetweenCells();
}
