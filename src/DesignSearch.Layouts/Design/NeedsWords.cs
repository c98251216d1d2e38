using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design;

/// <summary>What the catalogue lacks, in words.</summary>
internal static class NeedsWords
{
    /// <summary>The relay between a contact and a load that is too much for it.</summary>
    public static Purpose RelayBetween(Purpose contact) =>
        new(contact.System, Written.Sentence($"Its contact bears what is too much for a weaker one: {contact.Why}"), "in the control box");

    /// <summary>A small part that nothing serves.</summary>
    public static string SmallPart(SmallPartRole role, double volts, double amperes)
    {
        var voltage = volts > 0 ? Written.Sentence($" for {volts:0} V") : "";
        var current = amperes > 0 ? Written.Sentence($" and {amperes:0.0} A") : "";
        return $"a small part of role '{role}'{voltage}{current}";
    }
}
