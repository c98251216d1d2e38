using DesignSearch.Files;

namespace DesignSearch.Climate.Stations;

/// <summary>Finds stations by what a person calls them: a town, with or without its state in letters or in full.</summary>
public static class StationNames
{
    // Fewer letters begin too many words.
    private const int LeastOfWord = 3;

    private static readonly Lazy<List<Known>> Table = new(() => [.. StationTable.All.Select(Known.Of)]);

    /// <summary>Stations that a name fits: each of its words is one of the station's, or begins one. Best fit first.</summary>
    /// <param name="name">For instance "redmond or" or "Redmond, Oregon".</param>
    public static IReadOnlyList<Station> Find(string name)
    {
        var wanted = Words(name);
        return wanted.Length == 0 ? [] : [.. Table.Value.Where(k => k.Fits(wanted)).OrderBy(k => k.Strangeness(wanted)).Select(k => k.Station)];
    }

    /// <summary>A name of the table like one that fits none; none where nothing is like it.</summary>
    /// <param name="name">What was written.</param>
    public static string? Like(string name) => NearWord.Of(name.Split(',')[0].Trim(), Table.Value.SelectMany(k => (string[])[k.Name, k.Town[0]]).Distinct());

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static string[] Words(string text) =>
        string.Concat(text.Select(c => char.IsLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private sealed record Known(Station Station, string Name, string[] Town, string State, string[] All)
    {
        public static Known Of(Station station)
        {
            var parts = station.Place.Name.Split(", ");
            var town = Words(parts[0]);
            return new(station, parts[0], town, parts[^1], [.. town, .. Words(StateNames.Whole(parts[^1]))]);
        }

        // The last word may be the state's two letters.
        public bool Fits(string[] wanted) => wanted.Select((w, i) => (Word: w, MayBeState: i > 0 && i == wanted.Length - 1)).All(p =>
            All.Any(o => Same(o, p.Word) || (p.Word.Length >= LeastOfWord && o.StartsWith(p.Word, StringComparison.OrdinalIgnoreCase)))
            || (p.MayBeState && Same(State, p.Word)));

        // Words of the station that were not asked for, one at its beginning counting most.
        public int Strangeness(string[] wanted) => Town.Select((t, i) => wanted.Any(w => Same(t, w)) ? 0 : i == 0 ? Town.Length : 1).Sum();
    }
}
