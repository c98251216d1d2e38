using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Texts of our own, kept as eight digits of their digest, so that a change of any sign is noticed.</summary>
internal sealed class Pins
{
    private readonly SortedDictionary<string, StringBuilder> subjects = new(StringComparer.Ordinal);

    /// <summary>Skips on a system where the last bit may differ.</summary>
    public static void OnlyHere() =>
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Sine and cosine may differ in the last bit on another system.");

    /// <summary>Adds to what is told of a subject.</summary>
    public void Tell(string subject, string text)
    {
        if (!subjects.TryGetValue(subject, out var all))
            subjects.Add(subject, all = new());
        all.Append(text).Append('\n');
    }

    /// <summary>Fails where a subject is not as it was, and leaves the texts to be looked at.</summary>
    public void Compare(string[] pinned)
    {
        var digests = subjects.Select(s => s.Key + " " + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(s.Value.ToString())))[..8]).ToList();
        if (pinned.SequenceEqual(digests))
            return;
        var folder = Directory.CreateTempSubdirectory("designsearch-pinned-").FullName;
        foreach (var (subject, text) in subjects)
            File.WriteAllText(Path.Combine(folder, subject.Replace(' ', '-') + ".txt"), text.ToString());
        Assert.Fail($"moved: {string.Join("; ", digests.Except(pinned))}. The texts are in {folder}. Now they are \"{string.Join("\", \"", digests)}\"");
    }
}
