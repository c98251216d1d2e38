using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>What stands in a wiring table beside its figures.</summary>
internal static class WireWords
{
    public const string MainsFeeder = "mains to the greenhouse's mains box";
    public const string MainsBoxEnd = "mains box";
    public const string MainsSwitch = "residual-current device and circuit breaker where the cable begins; isolator in the mains box";
    public const string MainsStops = "earth carried out with the cable or an own rod: the licensed person's choice";
    public const string MainsBox = "the mains box";
    public const string DwellingSocket = "a socket in the dwelling behind a 30 mA residual-current device";
    public const string NoCableServes = "none in the catalogue serves";
    public const string OwnLead = "its own lead, or inside the box";

    public static string Supply(double volts) => Written.Sentence($"{volts:0} V supply to the control box");
}
