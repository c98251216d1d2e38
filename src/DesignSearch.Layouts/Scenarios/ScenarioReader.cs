using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Choices;
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
    /// <returns>The scenario.</returns>
    /// <exception cref="InputException">With every fault of every file.</exception>
    public static Scenario Read(string folder, string? weatherFile = null)
    {
        var faults = new FaultList();
        var shown = Path.Combine(folder, "scenario.toml");
        var file = TomlReader.ReadFile(shown, shown, faults);
        if (!faults.IsEmpty && !file.Keys.Any())
            faults.ThrowIfAny();

        var files = new List<(string Name, string Path)> { ("scenario.toml", shown) };
        file.Whole("format", Format, Format);
        var name = file.Text("name", 120);
        var description = file.Text("description", 4000, "");
        var catalogue = Catalogues(file, folder, files, faults);
        var stock = StockOf(file, folder, catalogue, files, faults);
        var climateTable = file.Table("climate", required: weatherFile is null);
        var siteTable = file.Table("site", required: true);
        var climate = new ClimateReading(climateTable, folder, files, faults).Read(weatherFile, SiteReading.Given(siteTable, name), SiteReading.GivenNumber(siteTable, "zone_hours"));
        var (place, site) = SiteReading.Read(siteTable, name, climate?.Record?.Place, mayDiffer: weatherFile is not null);
        var season = SeasonReading.Dates(file.Table("season", required: false), place.LatitudeDeg);
        var greenhouse = GreenhouseReading.Read(file.Table("greenhouse", required: true));
        var winters = WinterReading.Read(file);
        var money = MoneyReading.Read(file.Table("money", required: true));
        var (assumptions, set) = AssumptionReading.Read(file.Table("assumptions", required: false));
        var search = SearchReading(file.Table("search", required: false));
        var choices = Choices(file.Table("choices", required: false), catalogue, new(place.LatitudeDeg, greenhouse.FrostLimitC), greenhouse.BenchM2, file);
        file.ReportUnknown();
        faults.ThrowIfAny();

        return new Scenario
        {
            Name = name,
            Description = description,
            Place = place,
            Site = site,
            Greenhouse = greenhouse,
            Climate = climate!,
            Season = season,
            Winters = winters,
            Money = money,
            Catalogue = catalogue,
            Stock = stock,
            Choices = choices,
            Assumptions = assumptions,
            AssumptionsSet = set,
            Search = search,
            Files = files,
        };
    }

    private static Catalogue Catalogues(TomlTable file, string folder, List<(string Name, string Path)> files, FaultList faults)
    {
        var named = file.Find("catalogs");
        if (named is not { Kind: TomlKind.List } || named.Items.Count == 0 || named.Items.Any(i => i.Kind != TomlKind.Text))
        {
            file.FaultAt("catalogs", named is null ? "" : TomlTable.Shown(named), "a list of catalogue folders, for instance catalogs = [\"../../catalogs/starter\"]");
            return Catalogue.Load([], new FaultList());
        }

        var folders = new List<string>();
        foreach (var item in named.Items)
        {
            var path = Path.Combine(folder, item.Text);
            if (!Directory.Exists(path))
            {
                file.Fault(item, "a folder of catalogue files; there is none of this name");
                continue;
            }

            folders.Add(path);
            files.AddRange(Directory.EnumerateFiles(path, "*.csv").Order(StringComparer.Ordinal).Select(f => (Path.Combine(item.Text, Path.GetFileName(f)).Replace('\\', '/'), f)));
        }

        return Catalogue.Load(folders, faults);
    }

    private static Stock StockOf(TomlTable file, string folder, Catalogue catalogue, List<(string Name, string Path)> files, FaultList faults)
    {
        if (!file.Has("stock"))
            return Stock.Empty;
        var name = file.Text("stock", 200);
        var path = Path.Combine(folder, name);
        files.Add((name, path));
        return Stock.Load(path, catalogue.All.Count > 0 ? catalogue : null, faults);
    }

    private static List<VariedChoice> Choices(TomlTable? table, Catalogue catalogue, ChoiceGround ground, double benchM2, TomlTable file)
    {
        table ??= TomlReader.ReadText("", file.File, new FaultList());
        var choices = ChoiceTable.All.Select(c => ChoiceReading.Levels(table, c, catalogue, ground)).ToList();
        table.ReportUnknown();
        if (benchM2 == 0)
        {
            var at = ChoiceTable.IndexOf(ChoiceTable.BenchKey);
            if (table.Find(ChoiceTable.BenchKey) is { } named && choices[at].Levels.Any(l => !l.IsNone))
                table.Fault(named, $"'{GreenhouseReading.BenchKey}' in [greenhouse], the bench that is enough, before a bench may be chosen");
            choices[at] = choices[at] with { Levels = [ChoiceValue.None] };
        }

        var mayCollect = choices[ChoiceTable.IndexOf("collector")].Levels.Any(l => !l.IsNone);
        foreach (var empty in choices.Where(c => c.Levels.Count == 0))
        {
            if (mayCollect || empty.Choice.AwakeWhen is null)
                table.FaultAt(empty.Choice.Key, "", $"at least one part of kind {empty.Choice.PartKind} in the catalogue for '{empty.Choice.Key}'");
        }

        return [.. choices.Select(c => c.Levels.Count == 0 ? c with { Levels = [ChoiceTable.AtRest(c.Choice)] } : c)];
    }

    private static SearchWish SearchReading(TomlTable? table)
    {
        if (table is null)
            return new SearchWish(1, 6000, 12);
        var wish = new SearchWish((ulong)table.Number("seed", 0, 1e15, "", 1), (long)table.Number("evaluations", 1, 1e9, "", 6000), table.Whole("ranked", 1, 100, 12), table.Whole("unseen_winters", 0, 1000, SearchWish.UsualUnseenWinters));
        table.ReportUnknown();
        return wish;
    }
}
