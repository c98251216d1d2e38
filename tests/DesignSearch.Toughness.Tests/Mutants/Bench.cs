using System.Collections.Concurrent;
using System.Diagnostics;
using DesignSearch.Files;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Puts spoilt files before a reader and says what it must not do: crash, hang, or refuse without saying where.</summary>
/// <param name="spoil">Spoils a file by a seed; null for strokes on its bytes and words.</param>
internal sealed class Bench(Func<int, byte[], byte[]>? spoil = null)
{
    /// <summary>How many mutants there are in all, on a usual day, on the build machine, or as DESIGNSEARCH_MUTANTS says.</summary>
    public static int All { get; } = Longer.Many("DESIGNSEARCH_MUTANTS", usual: 3_000, longer: 50_000);

    // What the shares of all kinds of file come to.
    private const double SharesTogether = 1.335;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly ConcurrentBag<string> wrong = [];
    private int refused;

    /// <summary>Spoils the file <paramref name="name"/> of a folder a number of times and reads each.</summary>
    /// <param name="share">Share that this kind of file gets, beside the shares of the others.</param>
    /// <param name="make">Makes a folder of good files; called once a thread.</param>
    /// <param name="name">The file to spoil.</param>
    /// <param name="read">Reads the folder as a command would.</param>
    /// <param name="leastRefused">Share that must be refused at least, so that a reader which accepts everything fails.</param>
    public void Run(double share, Action<string> make, string name, Action<string> read, double leastRefused = 0.05)
    {
        var count = (int)Math.Ceiling(All * share / SharesTogether);
        var folders = new ConcurrentBag<string>();
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, () => Folder(make, folders), (i, _, folder) =>
        {
            var path = Path.Combine(folder, name);
            var good = File.ReadAllBytes(path);
            var seed = i * 31 + name.Length;
            var spoilt = spoil is null ? new Mutator(seed).Spoil(good) : spoil(seed, good);
            File.WriteAllBytes(path, spoilt);
            Read(folder, name, i, spoilt, read);
            File.WriteAllBytes(path, good);
            return folder;
        }, _ => { });
        foreach (var folder in folders)
            Directory.Delete(folder, recursive: true);
        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {count}:\n{string.Join('\n', wrong.Take(12))}");
        Assert.InRange(refused, leastRefused * count, count);
    }

    private void Read(string folder, string name, int index, byte[] spoilt, Action<string> read)
    {
        var clock = Stopwatch.StartNew();
        try
        {
            read(folder);
        }
        catch (InputException e)
        {
            Interlocked.Increment(ref refused);
            if (e.Faults.Count == 0)
                Wrong(name, index, spoilt, "a refusal without a fault");
            foreach (var fault in e.Faults)
            {
                if (fault.File.Length == 0 || fault.Expected.Length == 0 || fault.ToString().Any(char.IsControl))
                    Wrong(name, index, spoilt, "a fault that does not say enough: " + fault);
                // A weather file is also judged as a whole, whatever was spoilt: too many gaps, a sun that does not fit its place.
                if (fault.Line == 0 && Path.GetFileName(fault.File) is not ("w.csv" or "w.json") && spoilt.Any(b => b > ' '))
                    Wrong(name, index, spoilt, "a fault without a line: " + fault);
            }
        }
        catch (Exception e)
        {
            Wrong(name, index, spoilt, e.ToString());
        }

        if (clock.Elapsed > Patience)
            Wrong(name, index, spoilt, $"took {clock.Elapsed}");
    }

    private void Wrong(string name, int index, byte[] spoilt, string what)
    {
        var kept = Path.Combine(Path.GetTempPath(), $"mutant-{index}-{Path.GetFileName(name)}");
        File.WriteAllBytes(kept, spoilt);
        wrong.Add($"{kept}: {what[..Math.Min(700, what.Length)]}");
    }

    private static string Folder(Action<string> make, ConcurrentBag<string> folders)
    {
        // In memory where there is such a place: the disk is not what is tried here.
        var home = Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath();
        var folder = Directory.CreateDirectory(Path.Combine(home, "designsearch-" + Path.GetRandomFileName())).FullName;
        folders.Add(folder);
        make(folder);
        return folder;
    }
}
