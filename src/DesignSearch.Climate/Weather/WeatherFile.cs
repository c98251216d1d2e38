using DesignSearch.Climate.Formats;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Reads weather files of any known format, recognised by what stands in them.</summary>
public static class WeatherFile
{
    /// <summary>Reads one file, packed by gzip or not, into hour means of local standard time.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What the file does not say itself.</param>
    /// <exception cref="InputException">The file is missing, of no known format, or damaged beyond the repairs; every fault with its place.</exception>
    public static WeatherRecord Read(string path, ReadingOptions? options = null)
    {
        var source = SourceText.Read(path);
        var maps = KnownFormats.All(options?.FormatsFolder ?? Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, "formats"));
        var recognition = new Recognition(source);
        var map = maps.FirstOrDefault(recognition.Is) ?? throw new InputException(new InputFault(path, 1, 0, source.Lines[0], Expected(recognition, maps)));
        return new RecordMaker(path, map, source, options ?? new()).Make();
    }

    private static string Expected(Recognition recognition, IReadOnlyList<FormatMap> maps)
    {
        var nearest = recognition.Nearest(maps) is var (map, lacks) ? $"nearest comes {map.Title}, but the file lacks {lacks}" : "the file has nothing of any of them";
        return $"a format that can be read: {nearest}. A TOML file of your own in a folder 'formats' beside it can teach a new one. "
            + $"Known are: {string.Join("; ", maps.Select(m => m.Title))}";
    }
}
