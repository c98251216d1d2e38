namespace DesignSearch.Files.Toml;

/// <summary>Kinds of value in a TOML file.</summary>
public enum TomlKind
{
    /// <summary>Words in quotes.</summary>
    Text,

    /// <summary>A number without a decimal point.</summary>
    Whole,

    /// <summary>A number with one.</summary>
    Real,

    /// <summary>true or false.</summary>
    Flag,

    /// <summary>A date or a time.</summary>
    Moment,

    /// <summary>A list in brackets.</summary>
    List,

    /// <summary>A table.</summary>
    Table,
}
