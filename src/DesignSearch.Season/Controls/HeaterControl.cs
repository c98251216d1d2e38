using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Controls;

/// <summary>An electric heater on a thermostat, ideal at the middle of its band.</summary>
/// <param name="most">Its power [W].</param>
/// <param name="setC">Middle of the band [°C].</param>
internal struct HeaterControl<T>(in T most, in T setC)
    where T : unmanaged, ILane<T>
{
    private readonly T most = most;

    /// <summary>Middle of the band; a clock may move it [°C].</summary>
    public T SetC = setC;

    /// <summary>What it can give in this hour [W].</summary>
    public T NowW { get; private set; }

    /// <summary>Takes one hour's mains: 1 with, 0 without.</summary>
    public void Hour(double power) => NowW = most * T.Of(power);
}
