using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.OffGrid;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>Panel, charge controller and battery that give all current where there are no mains.</summary>
public sealed record BatteryPlan
{
    /// <summary>The panel.</summary>
    public required SunPanel Panel { get; init; }

    /// <summary>Panels in series, 1 or more.</summary>
    public required int InSeries { get; init; }

    /// <summary>Such strings side by side, 1 or 2: more would want a fuse each.</summary>
    public required int Strings { get; init; }

    /// <summary>What charges the battery.</summary>
    public required ChargeController Controller { get; init; }

    /// <summary>The battery.</summary>
    public required Battery Battery { get; init; }

    /// <summary>Batteries in series, so many that they make the voltage of the controls.</summary>
    public required int BatteriesInSeries { get; init; }

    /// <summary>Such strings side by side, 1 or more.</summary>
    public required int BatteryStrings { get; init; }

    /// <summary>The fuse at the battery; null where the catalogue has none.</summary>
    public BatteryFuse? Fuse { get; init; }

    /// <summary>Cable from the panels to the controller; null where the catalogue has none that serves.</summary>
    public Cable? PanelCable { get; init; }

    /// <summary>Cable from the battery to its fuse and on; null where the catalogue has none that serves.</summary>
    public Cable? BatteryCable { get; init; }

    /// <summary>Tilt of the panels [°], 0 flat to 90 upright.</summary>
    public required double TiltDeg { get; init; }

    /// <summary>Direction that they face, clockwise from true north [°].</summary>
    public required double AzimuthDeg { get; init; }

    /// <summary>Open voltage of a string on the coldest morning [V].</summary>
    public required double ColdOpenV { get; init; }

    /// <summary>Coldest hour outside of the design winters, which the battery must bear too [°C].</summary>
    public required double LowestC { get; init; }

    /// <summary>What may be drawn at any hour, at most [W].</summary>
    public required double StandingW { get; init; }

    /// <summary>What is drawn besides while there is daylight, at most [W].</summary>
    public required double DaylightW { get; init; }

    /// <summary>Devices that start together with all running [A].</summary>
    public required double StartA { get; init; }

    /// <summary>The same running [A].</summary>
    public required double RunningA { get; init; }

    /// <summary>Name of the winter with the darkest run.</summary>
    public required string RunWinter { get; init; }

    /// <summary>Its length [h].</summary>
    public required double RunHours { get; init; }

    /// <summary>What the battery gives over it, what the sun brings meanwhile taken off [W·h].</summary>
    public required double RunWh { get; init; }

    /// <summary>Charge that a new battery must have for it [A·h]; infinite where frost leaves nothing to take out.</summary>
    public required double NeededAmpHours { get; init; }

    /// <summary>What the sun brings in the darkest thirty days, as a share of what is drawn in them.</summary>
    public required double Refill { get; init; }

    /// <summary>From the panels to the charge controller, one way (own choice) [m].</summary>
    public const double PanelCableM = 10;

    /// <summary>From the battery to its fuse and on, one way; a piece more for each battery that is linked (common practice) [m].</summary>
    public double BatteryCableM => AtBatteryM + (LinkM * Batteries);

    private const double AtBatteryM = 1.5;
    private const double LinkM = 0.4;

    /// <summary>How many panels.</summary>
    public int Panels => InSeries * Strings;

    /// <summary>Their peak power [W].</summary>
    public double PeakW => Panels * Panel.Watts;

    /// <summary>Largest current into the battery [A].</summary>
    public double ChargeA => PeakW / SupplyPlan.ControlVolts;

    /// <summary>How many batteries.</summary>
    public int Batteries => BatteriesInSeries * BatteryStrings;

    /// <summary>Charge of all of them when they are new and warm [A·h].</summary>
    public double AmpHours => BatteryStrings * Battery.AmpHours;

    /// <summary>What the panels' cable must bear [A]: a quarter above the short circuit of all strings.</summary>
    public double PanelsShortA => Spare * Strings * Panel.ShortA;

    /// <summary>What the fuse at the battery must bear [A]: a quarter above charging and running current, and the start.</summary>
    public double FuseA => Math.Max(Spare * Math.Max(ChargeA, RunningA), StartA);

    // Bright cloud beside the sun gives more than the plate says; no fuse runs at its rating for good (common practice, no source).
    private const double Spare = 1.25;
}
