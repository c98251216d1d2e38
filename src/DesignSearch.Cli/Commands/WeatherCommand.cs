using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text;
using DesignSearch.Cli.Download;
using DesignSearch.Cli.Near;
using DesignSearch.Cli.Terminal;
using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Reporting.Weather;

namespace DesignSearch.Cli.Commands;

/// <summary>weather: reads one weather file and says what is in it; fetches one for a place; finds the twelve means of a station near a place.</summary>
internal sealed class WeatherCommand : Command
{
    private const double SamePlaceKm = 100;
    private const int MostNamed = 12;

    private readonly Argument<string?> file = new("FILE") { Description = "A weather file.", HelpName = "FILE", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> picture = new("--picture") { Description = "Draw the winter as a picture (PNG).", HelpName = "FILE.png" };

    private readonly Option<string?> run = new("--for")
    {
        Description = "Read it as this run would: with its place, its monthly means and its own formats.",
        HelpName = "RUN",
    };

    private readonly Option<string?> at = new("--at")
    {
        Description = "Fetch the typical year of a place from the public service PVGIS of the European Commission. Needs the network and --save.",
        HelpName = "LATITUDE,LONGITUDE",
    };

    private readonly Option<string?> years = new("--years")
    {
        Description = $"With --at: the hours of these years, {PvgisQuery.Served.First}-{PvgisQuery.Served.Last} or fewer, in place of the typical year.",
        HelpName = "FIRST-LAST",
    };

    private readonly Option<string?> near = new("--near")
    {
        Description = "Twelve means of the nearest of 1 011 stations of the United States, without a network, as [climate] of a scenario.",
        HelpName = "PLACE",
    };

    private readonly Option<double?> height = NumberOption.Real("--height", "With --near: height of your place above the sea.", "METRES", -400, 5000);
    private readonly Option<string?> save = new("--save") { Description = "With --at or --near: the new file to write.", HelpName = "FILE" };

    public WeatherCommand(Session session)
        : base("weather", "Reads one weather file: place, months, frost, cold spells, and what had to be repaired. Or gets one for a place.")
    {
        Arguments.Add(file);
        foreach (var option in new Option[] { picture, run, at, years, near, height, save, session.Json })
            Options.Add(option);
        Validators.Add(Check);
        SetAction((parsed, cancel) => Task.Run(
            () => parsed.GetValue(at) is { } place ? Fetch(session, parsed, Coordinates.Of(place)!, cancel)
                : parsed.GetValue(near) is { } name ? Near(session, parsed, name)
                : Read(session, parsed),
            CancellationToken.None));
    }

    // Which words go together; every slip at once.
    private void Check(CommandResult result)
    {
        bool Has(Symbol symbol) => symbol is Argument a ? result.GetResult(a) is { Tokens.Count: > 0 } : result.GetResult((Option)symbol) is { Implicit: false };
        Symbol[] ways = [file, at, near];
        var named = ways.Where(Has).Select(w => w.Name).ToList();
        if (named.Count == 0)
            result.AddError("weather takes a FILE to read, --at LATITUDE,LONGITUDE to fetch one, or --near PLACE for twelve means.");
        if (named.Count > 1)
            result.AddError($"{string.Join(" and ", named)} do not go together.");
        Needs(picture, file);
        Needs(run, file);
        Needs(years, at);
        Needs(height, near);
        if (Has(save) && !Has(at) && !Has(near))
            result.AddError("--save goes with --at or --near.");
        if (Has(at) && !Has(save))
            result.AddError("--at needs --save FILE.");
        if (result.GetValue(at) is { } place && Coordinates.Of(place) is null)
            result.AddError($"--at takes {Coordinates.Expected}; got '{VisibleText.Of(place)}'.");
        if (result.GetValue(years) is { } span && YearsWord.Of(span, PvgisQuery.Served).Fault is { Length: > 0 } fault)
            result.AddError(fault);

        void Needs(Symbol one, Symbol other)
        {
            if (Has(one) && !Has(other) && named.Count > 0)
                result.AddError($"{one.Name} goes with {other.Name}.");
        }
    }

    private int Read(Session session, ParseResult parsed) => session.Guarded(parsed, "Reading the weather file", line =>
    {
        var path = parsed.GetValue(file)!;
        var scenario = parsed.GetValue(run) is { } folder ? ScenarioReader.Read(folder, path) : null;
        var record = scenario?.Climate.Record ?? WeatherFile.Read(path);
        if (parsed.GetValue(picture) is { } target)
            OutputFile.Write(
                "--picture", target, WeatherPicture.Png(WeatherDaysMaker.Of(record, scenario?.Greenhouse.FrostLimitC ?? 0)),
                (scenario?.Files.Select(f => f.Path) ?? []).Append(path));
        line.End();
        if (parsed.GetValue(session.Json))
            session.WriteJson(WeatherReport.Of(record));
        else
            WeatherText.Tell(session.Out, record);
        return ExitCode.Done;
    });

    private int Fetch(Session session, ParseResult parsed, Coordinates place, CancellationToken cancel)
    {
        using var service = session.Pvgis();
        return session.Guarded(parsed, "", line =>
        {
            var target = parsed.GetValue(save)!;
            OutputFile.RequireNew("--save", target);
            line.Show(double.NaN, PvgisWords.Beginning(service.Host));
            var query = new PvgisQuery(place.LatitudeDeg, place.LongitudeDeg, parsed.GetValue(years) is { } span ? YearsWord.Of(span, PvgisQuery.Served).Years : null);
            var (bytes, record) = service.Fetch(query, Path.GetFileName(target), Again, cancel).GetAwaiter().GetResult();
            OutputFile.WriteNew("--save", target, bytes);
            line.End();
            if (parsed.GetValue(session.Json))
            {
                session.WriteJson(WeatherReport.Of(record));
                return ExitCode.Done;
            }

            WeatherText.Tell(session.Out, record);
            foreach (var text in (string[])["", PvgisWords.Asked(query, service.Host), .. PvgisWords.Credit, PvgisWords.Saved(target), PvgisWords.Line(target)])
                session.Out.WriteLine(text);
            return ExitCode.Done;

            void Again(string sentence)
            {
                line.End();
                if (!parsed.GetValue(session.Quiet))
                    session.Tell([sentence], ExitCode.Done);
            }
        });
    }

    private int Near(Session session, ParseResult parsed, string name) => session.Guarded(parsed, "", _ =>
    {
        var report = Look(name, parsed.GetValue(height));
        if (parsed.GetValue(save) is { } target)
        {
            if (report.Climate is null)
                throw new InputException(new InputFault("--near", 0, 0, name, NearWords.Nearer(report.Stations[0].DistanceKm)));
            OutputFile.WriteNew("--save", target, Encoding.UTF8.GetBytes(report.Part()));
        }

        if (parsed.GetValue(session.Json))
            session.WriteJson(report);
        else
            Tell(session.Out, report, parsed.GetValue(save));
        return ExitCode.Done;
    });

    private static NearReport Look(string name, double? heightM)
    {
        if (Coordinates.Of(name) is { } place)
            return NearReport.Of(place.ToString(), place.LatitudeDeg, place.LongitudeDeg, heightM);
        if (Coordinates.IsMeant(name))
            throw new InputException(new InputFault("--near", 0, 0, name, Coordinates.Expected));
        var found = StationNames.Find(name);
        if (found.Count == 0)
            throw new InputException(new InputFault("--near", 0, 0, name, NearWords.NoSuch(StationNames.Like(name))));
        var first = found[0].Place;
        if (found.Any(s => s.DistanceKm(first.LatitudeDeg, first.LongitudeDeg) > SamePlaceKm))
            throw new InputException(new InputFault("--near", 0, 0, name, NearWords.Several(found, MostNamed)));
        return NearReport.Of(first.Name, first.LatitudeDeg, first.LongitudeDeg, heightM ?? first.ElevationM);
    }

    private static void Tell(TextWriter output, NearReport report, string? saved)
    {
        output.WriteLine(NearWords.Title(report));
        output.WriteLine(NearWords.Columns);
        foreach (var station in report.Stations)
            output.WriteLine(NearWords.Row(station));
        output.WriteLine();
        if (saved is null && report.Climate is not null)
        {
            output.Write(report.Part());
            return;
        }

        foreach (var remark in report.Remarks)
            output.WriteLine(remark);
        if (saved is not null)
            output.WriteLine(NearWords.Saved(saved));
    }
}
