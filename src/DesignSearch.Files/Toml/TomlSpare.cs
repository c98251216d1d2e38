namespace DesignSearch.Files.Toml;

/// <summary>A table that takes what stands under a heading which cannot be used, so that it does not fall to the heading above.</summary>
/// <param name="Name">Its key, which no person writes.</param>
/// <param name="Heading">The heading that was meant.</param>
internal readonly record struct TomlSpare(string Name, string Heading);
