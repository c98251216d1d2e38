namespace DesignSearch.Files.Toml;

/// <summary>How slips in a TOML file are told to a person who has never heard of TOML.</summary>
internal static class TomlWords
{
    public const string CommaInList = " (with decimal points, and commas only between the numbers)";
    public const string Quotes = " (write it between double quotes)";
    public const string Words = "words in quotes";

    public const string CloseBracket = "a ] that closes this bracket";
    public const string CloseBrace = "a } that closes this brace in the same line";
    public const string CloseTriple = "three more of these quotes behind the text; nothing closes it";
    public const string CloseHeading = "a heading in brackets, for instance [site]";
    public const string CloseQuote = "one more of these quotes behind the words; nothing closes it";
    public const string OpenQuote = "a quote in front of the words too";
    public const string PlainQuotes = "plain double quotes \" \" around the words (a word processor puts others: use a plain text editor)";
    public const string Remark = "a # in front of a remark, or a line of the kind: key = value";
    public const string RemarkBehind = "a # in front of the remark behind the value";
    public const string EqualsSign = "an = between the key and its value";
    public const string NoKey = "a key in front of the =, one word with _ for blanks";
    public const string NoValue = "a value behind the = (a # in front of the line leaves it out)";
    public const string Backslash = "/ in place of \\ in what stands in quotes";
    public const string Commas = "commas between the values of a list";

    public static string Twice(string key, int line) =>
        FormattableString.Invariant($"each key once under its heading; '{key}' stands in line {line} already");

    public static string HeadingTwice(string heading, int line) =>
        FormattableString.Invariant($"each heading once; {heading} stands in line {line} already, and these lines belong under it");

    public static string Flag(string word) => word.ToLowerInvariant() switch
    {
        "yes" or "y" or "on" or "true" => " (write true, without quotes)",
        "no" or "n" or "off" or "false" => " (write false, without quotes)",
        _ => "",
    };

    public static string FlagWord(string word) => word.ToLowerInvariant() is "yes" or "y" or "on" or "true"
        ? "true or false in small letters (write true)"
        : "true or false in small letters (write false)";

    public static string InQuotes(string words) => $"words between double quotes: \"{words}\"";

    public static string Unreadable(string why) => "a line that can be read: " + why;
}
