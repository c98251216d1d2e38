namespace DesignSearch.Testing;

/// <summary>Where the checkout lies that the tests were built from.</summary>
public static class Repository
{
    /// <summary>The folder that holds DesignSearch.sln.</summary>
    public static string Root { get; } = Find();

    /// <summary>A path inside the checkout.</summary>
    public static string At(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "DesignSearch.sln")))
                return folder.FullName;
        }

        throw new InvalidOperationException("The tests run outside a checkout: no DesignSearch.sln above " + AppContext.BaseDirectory);
    }
}
