using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using DesignSearch.Reporting.Drawings;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>
/// Each kind of picture, of sixty random plants, line by line as it was when it was last looked at. A part more in the catalogue draws other plants and
/// moves them all: then, and after a change that was meant, the digests that the test tells are put in.
/// </summary>
public sealed class PinnedPictureTests
{
    private static readonly string[] Digests =
    [
        "control 65018e75", "cores be8bff25", "elevation 3ccb3522", "frame b5d2f4f1", "plan fbd4d828", "section 50a32006", "water 91481a61",
    ];

    [SkippableFact]
    public void Pinned_pictures_of_random_plants()
    {
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Sine and cosine may differ in the last bit on another system.");
        var pictures = DrawnPlants.All.Take(60).SelectMany(p => PictureSet.Of(p.Layout));
        var found = pictures.GroupBy(p => p.Name.Split('-')[0]).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Key + " " + Digest(g)).ToList();
        Assert.True(Digests.SequenceEqual(found), "now they are \"" + string.Join("\", \"", found) + "\"");
    }

    private static string Digest(IEnumerable<Picture> pictures) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(pictures.Select(p => p.AsFile("a plant") + p.Table.Text)))))[..8];
}
