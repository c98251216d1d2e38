using DesignSearch.Season.Flows;

namespace DesignSearch.Season.Solar;

/// <summary>Heat and electricity of collector, pipes, tank and release.</summary>
public static class SolarFlows
{
    /// <summary>Tank, collector and pipes.</summary>
    public static Store Loop { get; } = new("loop", "tank, collector and pipes");

    /// <summary>Sun absorbed by the collector.</summary>
    public static Flow Sun { get; } = new("sun-collector", Accounts.Sun, Loop.Id, "sun on the collector");

    /// <summary>From the collector to the outside.</summary>
    public static Flow CollectorLoss { get; } = new("collector-loss", Loop.Id, Accounts.OutsideAir, "from the collector to the outside", "from the outside into the collector");

    /// <summary>From both pipes to the outside, what their cooling water lost at night included.</summary>
    public static Flow PipeLoss { get; } = new("pipe-loss", Loop.Id, Accounts.OutsideAir, "from the pipes to the outside", "from the outside into the pipes");

    /// <summary>From the tank's walls to the house.</summary>
    public static Flow TankLoss { get; } = new("tank-loss", Loop.Id, Accounts.House, "from the tank's walls into the house", "from the house into the tank's walls");

    /// <summary>From the tank to the house by pipe or fan coil.</summary>
    public static Flow Release { get; } = new("release", Loop.Id, Accounts.House, "released from the tank into the house", "from the house into the release");

    /// <summary>Electricity of the release's pump and fan, which ends as heat in the house.</summary>
    public static Flow ReleaseFan { get; } = new("release-fan", Accounts.Mains, Accounts.House, "pump and fan of the release");

    /// <summary>Pump and fan of the release.</summary>
    public static Use ReleaseUse { get; } = new("release", "pump and fan of the release", IsHeat: false);

    /// <summary>The collector's pump, with that of an exchanger; its heat is left out of the model.</summary>
    public static Use Pump { get; } = new("collector-pump", "collector's pump", IsHeat: false);

    // In the order in which the loop books them.
    internal static Flow[] Flows { get; } = [Sun, CollectorLoss, PipeLoss, TankLoss];

    internal static Use[] Uses { get; } = [Pump];
}
