using System.Text.Json;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>What is shipped is in the list of licences that is shipped with it, with its version and no more.</summary>
public sealed class LicenceTests
{
    [Fact]
    public void Every_package_that_is_shipped_stands_in_the_list_with_its_version()
    {
        var list = File.ReadAllLines(Repository.At("src", "DesignSearch.Cli", "Licences", "LICENCES.txt"))
            .Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(w => w.Length > 3 && char.IsAsciiDigit(w[1][0])).ToDictionary(w => w[0], w => w[1]);
        using var locked = JsonDocument.Parse(File.ReadAllText(Repository.At("src", "DesignSearch.Cli", "packages.lock.json")));
        var shipped = locked.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(f => f.Value.EnumerateObject())
            .Where(p => p.Value.GetProperty("type").GetString() != "Project").ToDictionary(p => p.Name, p => p.Value.GetProperty("resolved").GetString()!);
        Assert.Equal(shipped.OrderBy(p => p.Key, StringComparer.Ordinal), list.OrderBy(p => p.Key, StringComparer.Ordinal));
    }
}
