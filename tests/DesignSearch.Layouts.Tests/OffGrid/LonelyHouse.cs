using DesignSearch.Files;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Testing;

namespace DesignSearch.Layouts.Tests;

/// <summary>A greenhouse on a saddle without mains: an invented place south of the equator, an invented house.</summary>
internal sealed class LonelyHouse : IDisposable
{
    private const string Text = """
        format = 1
        name = "High Saddle"
        description = "Invented for the tests: a greenhouse at a hut on a saddle, a day's walk from any mains."
        catalogs = ["CATALOGS/starter"]

        [site]
        place = "High Saddle (invented)"
        latitude_deg = -43.4
        longitude_deg = 170.9
        elevation_m = 810
        zone_hours = 12
        no_mains = true
        pipe_run_m = 8
        collector_above_tank_m = 0.8
        collector_space_m2 = 8
        store_floor_m2 = 3.0
        working_wind_m_per_s = 10
        design_wind_m_per_s = 30

        [greenhouse]
        length_m = 4.0
        width_m = 2.6
        eaves_m = 1.8
        ridge_m = 2.5
        ridge_azimuth_deg = 90
        cover_u_w_per_m2k = 3.6
        cover_light = 0.74
        cover_layers = 2
        air_changes_per_hour = 0.7
        air_changes_per_hour_per_m_per_s = 0.1
        edge_loss_w_per_mk = 1.2
        vent_area_m2 = 0.8
        frost_limit_c = 2.0

        [season]
        start = "05-01"
        end = "09-30"

        [climate]
        mean_air_c = [14.6, 14.5, 12.4, 9.1, 5.4, 2.5, 1.9, 3.6, 6.2, 8.4, 10.7, 13.1]
        mean_daily_low_c = [8.6, 8.4, 6.4, 3.3, 0.1, -2.3, -2.9, -1.5, 0.8, 2.7, 4.8, 7.3]
        sun_kwh_per_m2_day = [6.4, 5.5, 4.3, 2.9, 1.9, 1.5, 1.7, 2.6, 3.8, 5.1, 6.1, 6.6]
        wind_m_per_s = [2.6, 2.4, 2.2, 2.0, 1.8, 1.7, 1.7, 1.9, 2.2, 2.5, 2.6, 2.6]
        humidity_pct = [70, 72, 74, 77, 80, 82, 82, 79, 75, 72, 70, 70]
        lowest_known_c = -9.5
        character = "dry inland"

        [[winters]]
        name = "typical"
        kind = "typical"
        weight = 0.9

        [[winters]]
        name = "hard"
        kind = "hard"
        weight = 0.1
        return_years = 10

        [money]
        currency = "shells"
        budget = 9000
        years = 12
        interest = 0.03

        [choices]
        CHOICES
        """;

    public LonelyHouse(string choices = "", params (string From, string To)[] changes)
    {
        Folder = Directory.CreateTempSubdirectory("designsearch-").FullName;
        var text = Text.Replace("CATALOGS", Repository.At("catalogs").Replace('\\', '/'), StringComparison.Ordinal)
            .Replace("CHOICES", choices, StringComparison.Ordinal);
        foreach (var (from, to) in changes)
        {
            if (!text.Contains(from, StringComparison.Ordinal))
                throw new ArgumentException($"The scenario has no '{from}'.", nameof(changes));
            text = text.Replace(from, to, StringComparison.Ordinal);
        }

        File.WriteAllText(Path.Combine(Folder, "scenario.toml"), text);
    }

    public string Folder { get; }

    public Scenario Read() => ScenarioReader.Read(Folder);

    public IReadOnlyList<InputFault> Faults()
    {
        try
        {
            Read();
            return [];
        }
        catch (InputException e)
        {
            return e.Faults;
        }
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
