using DesignSearch.Files;

namespace DesignSearch.Climate.Stations;

/// <summary>Finds stations by what a person calls them: a town, with or without its state in letters or in full.</summary>
public static class StationNames
{
    // Fewer letters begin too many words.
    private const int LeastOfWord = 3;

    /// <summary>Stations that a name fits: each of its words is one of the station's, or begins one. Best fit first.</summary>
    /// <param name="name">For instance "redmond or" or "Redmond, Oregon".</param>
    public static IReadOnlyList<Station> Find(string name)
    {
        var wanted = Words(name);
        return wanted.Count == 0 ? [] : [.. StationTable.All.Where(s => Fits(wanted, s)).OrderBy(s => Strangeness(wanted, s))];
    }

    /// <summary>A name of the table like one that fits none; none where nothing is like it.</summary>
    /// <param name="name">What was written.</param>
    public static string? Like(string name) =>
        NearWord.Of(name.Split(',')[0].Trim(), StationTable.All.SelectMany(s => (string[])[Town(s), Words(Town(s))[0]]).Distinct());

    private static bool Fits(List<string> wanted, Station station)
    {
        var (town, state) = (Words(Town(station)), State(station));
        List<string> own = [.. town, .. Words(StateNames.Whole(state))];
        // The last word may be the state's two letters.
        return wanted.Select((w, i) => (w, i)).All(p =>
            own.Any(o => Same(o, p.w) || (p.w.Length >= LeastOfWord && o.StartsWith(p.w, StringComparison.OrdinalIgnoreCase)))
            || (p.i > 0 && p.i == wanted.Count - 1 && Same(state, p.w)));
    }

    // Words of the station that were not asked for, those at its beginning counting most.
    private static int Strangeness(List<string> wanted, Station station)
    {
        var town = Words(Town(station));
        return town.Select((t, i) => wanted.Any(w => Same(t, w)) ? 0 : i == 0 ? town.Count : 1).Sum();
    }

    private static string Town(Station station) => station.Place.Name.Split(", ")[0];

    private static string State(Station station) => station.Place.Name.Split(", ")[^1];

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static List<string> Words(string text) =>
        [.. string.Concat(text.Select(c => char.IsLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries)];
}
