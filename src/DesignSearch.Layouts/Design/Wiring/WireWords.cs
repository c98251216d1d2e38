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
    public const string Guard = "the battery guard";
    public const string Converter = "its converter, on the battery";
    public const string Panels = "photovoltaic panels to the charge controller";
    public const string PanelSwitch = "switch for direct current beside the charge controller";
    public const string Battery = "battery to charge controller and guard";
    public const string BatteryFuse = "fuse at the battery, for direct current and a dead short";
    public const string BatteryStops = "the fuse goes in last";
    public const string NoCableServes = "none in the catalogue serves";
    public const string OwnLead = "its own lead, or inside the box";

    public static string PanelStops(BatteryPlan plan)
    {
        var strings = Written.Count(plan.Strings, "string");
        return Written.Sentence(
            $"{plan.InSeries} in series, {strings};",
            $"live whenever light falls; {plan.ColdOpenV:0} V open on the coldest morning");
    }

    public static string Supply(double volts) => Written.Sentence($"{volts:0} V supply to the control box");
}
