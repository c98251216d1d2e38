using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads a scenario with everything it names: catalogues, stock, weather. All faults of all files are told at once.</summary>
public static class ScenarioReader
{
    /// <summary>Version of the scenario format.</summary>
    public const int Format = 1;

    /// <summary>Reads the scenario of a run folder.</summary>
    /// <param name="folder">The run folder; its scenario.toml is read, and paths in it are relative to it.</param>
    /// <param name="weatherFile">A weather file that takes the place of the scenario's own climate, or null.</param>
    /// <param name="systems">The systems that can be built; null for all that there are.</param>
    /// <returns>The scenario.</returns>
    /// <exception cref="InputException">With every fault of every file.</exception>
    public static Scenario Read(string folder, string? weatherFile = null, SystemSet? systems = null)
    {
        systems ??= SystemList.All;
        var faults = new FaultList();
        var shown = Path.Combine(folder, "scenario.toml");
        var file = TomlReader.ReadFile(shown, shown, faults);
        if (!faults.IsEmpty && !file.Keys.Any())
            faults.ThrowIfAny();

        var files = new List<(string Name, string Path)> { ("scenario.toml", shown) };
        file.Whole("format", Format, Format);
        var name = file.Text("name", 120);
        var separator = file.Word("spreadsheet", ["comma", "semicolon"], "comma") == "semicolon" ? CellSeparator.Semicolon : CellSeparator.Comma;
        var description = file.Text("description", 4000, "");
        var catalogue = Catalogues(file, folder, systems, files, faults);
        var stock = StockOf(file, folder, catalogue, files, faults);
        var climateTable = file.Table("climate", required: weatherFile is null);
        var siteTable = file.Table("site", required: true);
        var climate = new ClimateReading(climateTable, folder, files, faults)
            .Read(weatherFile, SiteReading.Given(siteTable, name), SiteReading.GivenNumber(siteTable, "zone_hours"));
        var (place, site) = SiteReading.Read(siteTable, name, climate?.Record?.Place, mayDiffer: weatherFile is not null);
        var season = SeasonReading.Dates(file.Table("season", required: false), place.LatitudeDeg);
        var greenhouse = GreenhouseReading.Read(file.Table("greenhouse", required: true), systems);
        greenhouse = greenhouse with { Fit = FittedReading.Beside(folder, files, faults) };
        var winters = WinterReading.Read(file, site.HasNoMains);
        var money = MoneyReading.Read(file.Table("money", required: true), site.HasNoMains);
        var (assumptions, set) = AssumptionReading.Read(file.Table("assumptions", required: false), systems.Assumptions);
        var search = SearchReading(file.Table("search", required: false));
        var choices = Choices(file.Table("choices", required: false), systems, catalogue, place.LatitudeDeg, greenhouse, file, site.HasNoMains);
        file.ReportUnknown();
        faults.ThrowIfAny();

        return new Scenario
        {
            Name = name,
            Description = description,
            Separator = separator,
            Place = place,
            Site = site,
            Greenhouse = greenhouse,
            Climate = climate!,
            Season = season,
            Winters = winters,
            Money = money,
            Catalogue = catalogue,
            Stock = stock,
            Systems = systems,
            Choices = choices,
            Assumptions = assumptions,
            AssumptionsSet = set,
            Search = search,
            Files = files,
        };
    }

    private static Catalogue Catalogues(TomlTable file, string folder, SystemSet systems, List<(string Name, string Path)> files, FaultList faults)
    {
        var named = file.Find("catalogs");
        if (named is not { Kind: TomlKind.List } || named.Items.Count == 0 || named.Items.Any(i => i.Kind != TomlKind.Text))
        {
            const string expected = "a list of catalogues, for instance catalogs = [\"starter\"]";
            if (named is null)
                file.Missing("catalogs", expected);
            else
                file.FaultAt("catalogs", TomlTable.Shown(named), expected);
            return Catalogue.Unread;
        }

        var (folders, isWhole) = (new List<string>(), true);
        foreach (var item in named.Items)
        {
            if (CatalogueFolders.Find(folder, item.Text) is not { } path)
            {
                file.Fault(item, CatalogueFolders.Missing(folder, item.Text));
                isWhole = false;
                continue;
            }

            folders.Add(path);
            files.AddRange(Directory.EnumerateFiles(path, "*.csv").Order(StringComparer.Ordinal).Select(f => (Path.Combine(item.Text, Path.GetFileName(f)).Replace('\\', '/'), f)));
        }

        var read = Catalogue.Load(folders, systems.Kinds, faults);
        return isWhole ? read : Catalogue.Unread;
    }

    private static Stock StockOf(TomlTable file, string folder, Catalogue catalogue, List<(string Name, string Path)> files, FaultList faults)
    {
        if (!file.Has("stock"))
            return Stock.Empty;
        var name = file.Text("stock", 200);
        var path = Path.Combine(folder, name);
        files.Add((name, path));
        return Stock.Load(path, catalogue, faults);
    }

    private static List<VariedChoice> Choices(TomlTable? table, SystemSet systems, Catalogue catalogue, double latitudeDeg, Greenhouse greenhouse, TomlTable file, bool hasNoMains)
    {
        table ??= TomlReader.ReadText("", file.File, new FaultList());
        var ground = new ChoiceGround(latitudeDeg, greenhouse.FrostLimitC);
        var read = systems.All.SelectMany(s => s.Choices.Select(c => (System: s, Varied: ChoiceReading.Levels(table, c, catalogue, ground)))).ToList();
        table.ReportUnknown();
        var choices = read.Select(r => r.System.Allowed(hasNoMains ? OffMains(r.Varied, table) : r.Varied, greenhouse, table)).ToList();
        bool MayBe(PartChoice root) => choices[systems.Choices.IndexOf(root)].Levels.Any(l => !l.IsNone);
        foreach (var empty in choices.Where(c => c.Levels.Count == 0).Select(c => c.Choice).OfType<PartChoice>())
        {
            if (!catalogue.MayLack(empty.Kind) && (empty.Under is not { } root || MayBe(root)))
                table.FaultAt(empty.Key, "", $"at least one part of kind {empty.Kind.Name} in the catalogue for '{empty.Key}'");
        }

        return [.. choices.Select(c => c.Levels.Count == 0 ? c with { Levels = [c.Choice.AtRest] } : c)];
    }

    // What needs mains is not offered; named by the builder it is a fault.
    private static VariedChoice OffMains(VariedChoice varied, TomlTable table)
    {
        var left = varied.Levels.Where(l => l.Part is not { RunsOnMains: true }).ToList();
        if (left.Count == varied.Levels.Count)
            return varied;
        if (table.Find(varied.Choice.Key) is { } named)
            table.Fault(named, $"{NoMains.ExpectedPart} '{varied.Choice.Key}'");
        return varied with { Levels = left };
    }

    private static SearchWish SearchReading(TomlTable? table)
    {
        if (table is null)
            return new SearchWish(1, 6000, 12);
        var wish = new SearchWish(
            (ulong)table.Number("seed", 0, 1e15, "", 1),
            (long)table.Number("evaluations", 1, 1e9, "", 6000),
            table.Whole("ranked", 1, 100, 12),
            table.Whole("unseen_winters", 0, 1000, SearchWish.UsualUnseenWinters),
            table.Number("certainty", 0, 0.99, "", SearchWish.UsualCertainty));
        table.ReportUnknown();
        return wish;
    }
}
