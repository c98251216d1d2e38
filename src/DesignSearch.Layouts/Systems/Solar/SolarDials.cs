namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What is dialled in on a solar plant.</summary>
public sealed record SolarDials
{
    /// <summary>Hours from dawn to the swing where nothing else is said [h] (five to six is common practice, no source).</summary>
    public const double UsualSwitchHours = 5.5;

    /// <summary>Steps through the day where nothing else is said (own choice).</summary>
    public const int UsualSteps = 5;

    /// <summary>Tilt of the collector in its middle position [°], 0 flat to 90 upright.</summary>
    public required double TiltDeg { get; init; }

    /// <summary>Direction it faces there, clockwise from true north [°].</summary>
    public required double AzimuthDeg { get; init; }

    /// <summary>Turn to either side of the middle [°]; 0 when fixed.</summary>
    public required double LimitDeg { get; init; }

    /// <summary>Hours from dawn to the swing of a mount with two positions [h]; the usual ones for any other.</summary>
    public required double SwitchHours { get; init; }

    /// <summary>Steps through the day of a stepping mount; the usual ones for any other.</summary>
    public required int Steps { get; init; }

    /// <summary>The pump starts where the collector is warmer than the tank's bottom by this [K].</summary>
    public required double StartDifferenceK { get; init; }

    /// <summary>The pump stops where it is no longer warmer by this [K].</summary>
    public required double StopDifferenceK { get; init; }

    /// <summary>Middle of the band of the heat release's thermostat [°C].</summary>
    public required double ReleaseSetC { get; init; }

    /// <summary>Width of that band [K].</summary>
    public required double ReleaseBandK { get; init; }

    /// <summary>Tank's top over <see cref="ReleaseSetC"/> below which the release stops [K].</summary>
    public required double ReleaseStopK { get; init; }

    /// <summary>Air above which pump and fan of the release bring the house's heat into the tank [°C]; 0 never.</summary>
    public required double GatherAboveC { get; init; }
}
