using System.Text;
using System.Text.RegularExpressions;
using DesignSearch.Files;
using DesignSearch.Runs.Store;

namespace DesignSearch.Runs.Folder;

/// <summary>
/// The files that searches wrote into a run's folder, by a list that lies in it. Only these are ever replaced or removed; what the builder
/// put there is left alone.
/// </summary>
public sealed partial class RunOutputs
{
    private const string Opening = "# Written by searches in this folder; only these files are replaced or removed.";
    private const int MostBytes = 1_000_000;
    private const string TemporaryEnding = ".designsearch.tmp";
    private static readonly string[] Always = ["run.json", "front.csv", "ranking.csv", "pareto.png", "pareto.svg", "report.html", "figures.html", "lists.xlsx"];

    private readonly RunFolder folder;
    private readonly SortedSet<string> ours;
    private readonly bool isListed;

    private RunOutputs(RunFolder folder)
    {
        this.folder = folder;
        var listed = Listed();
        isListed = listed is not null;
        // A run of a time before there was a list: what is named like a result is one.
        ours = listed ?? new(folder.IsFinished ? Always.Concat(Lists().Where(IsResult)) : [], StringComparer.Ordinal);
    }

    /// <summary>The results in a folder.</summary>
    public static RunOutputs Of(RunFolder folder) => new(folder);

    /// <summary>Refuses to search where a result would take the place of something that no search wrote.</summary>
    /// <exception cref="InputException">Each such file.</exception>
    public void RefuseForeign()
    {
        var faults = new FaultList();
        void Add(string name, string expected) => faults.Add(folder.At(name), 0, 0, "", expected);

        const string free = "a name that is free: a search writes a file of this name, and this one is none of its own; move it away or rename it";
        foreach (var name in Always.Where(n => Directory.Exists(folder.At(n)) || (File.Exists(folder.At(n)) && !ours.Contains(n))))
            Add(name, free);
        if (File.Exists(folder.Lists) || new DirectoryInfo(folder.Lists).LinkTarget is not null)
            Add(ListFile.Folder, "a folder of the run's own, not a file or a link; move it away or rename it");
        else
            foreach (var name in Lists().Where(n => IsResult(n) && !ours.Contains(n)))
                Add(name, free);
        if (Path.Exists(folder.Written) && !isListed)
            Add(Path.GetFileName(folder.Written), free);
        if (!FolderHold.IsNoteOrFree(folder))
            Add(Path.GetFileName(folder.UnderWay), free);
        faults.ThrowIfAny();
    }

    /// <summary>Writes the results of a kind and removes those of an earlier search that are not among them.</summary>
    /// <param name="isOfKind">Whether a name is of this kind.</param>
    /// <param name="files">Their content by their name in the folder, with a forward slash.</param>
    public void Replace(Func<string, bool> isOfKind, IEnumerable<(string Name, byte[] Content)> files)
    {
        var all = files.ToList();
        ours.UnionWith(all.Select(f => f.Name));
        SaveList();
        foreach (var (name, content) in all)
            SafeFile.Write(folder.At(name), content);
        var stale = ours.Where(isOfKind).Except(all.Select(f => f.Name)).ToList();
        foreach (var name in stale)
            File.Delete(folder.At(name));
        RemoveTemporary();
        if (stale.Count == 0)
            return;
        ours.ExceptWith(stale);
        SaveList();
    }

    /// <summary>Text as a file holds it.</summary>
    public static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private void SaveList()
    {
        var text = Opening + "\n" + string.Concat(ours.Select(n => n + "\n"));
        if (!File.Exists(folder.Written) || File.ReadAllText(folder.Written) != text)
            SafeFile.Write(folder.Written, text);
    }

    // What a killed process had not yet renamed.
    private void RemoveTemporary()
    {
        foreach (var place in new[] { folder.Path, folder.Lists }.Where(Directory.Exists))
        {
            foreach (var file in Directory.EnumerateFiles(place, "*" + TemporaryEnding))
                File.Delete(file);
        }
    }

    private SortedSet<string>? Listed()
    {
        if (InputFile.Read(folder.Written, MostBytes, out _) is not { } bytes || Encoding.UTF8.GetString(bytes) is var text && !text.StartsWith(Opening, StringComparison.Ordinal))
            return null;
        return new(Encoding.UTF8.GetString(bytes).Split('\n').Where(n => Always.Contains(n) || IsResult(n)), StringComparer.Ordinal);
    }

    private IEnumerable<string> Lists() => Directory.Exists(folder.Lists)
        ? Directory.EnumerateFileSystemEntries(folder.Lists).Select(f => ListFile.Folder + "/" + Path.GetFileName(f)) : [];

    /// <summary>True for the name of a list, paper or picture as a search makes them: <c>lists/3-slug.csv</c>.</summary>
    public static bool IsResult(string name) => ResultName().IsMatch(name);

    [GeneratedRegex(@"\Alists/[0-9]{1,9}-[a-z0-9-]+\.(csv|toml|svg)\z")]
    private static partial Regex ResultName();
}
