using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Walls;

/// <summary>What solid walls add to the books and to the hourly table.</summary>
public static class WallFlows
{
    /// <summary>Out of the heated room behind the back wall.</summary>
    public static Flow Room { get; } =
        new("room-behind", Accounts.RoomBehind, Accounts.House, "out of the heated room behind the wall", "into the heated room behind the wall");

    /// <summary>The same, mean of the hour.</summary>
    public static HourColumn RoomW { get; } = new("room_behind_w", "out of the heated room", "W");

    /// <summary>The base wall.</summary>
    public static Store Base { get; } = new("base-wall", "base wall");

    /// <summary>Between the base wall and the air of the house.</summary>
    public static Flow Inside { get; } = new("base-wall-inside", Base.Id, Accounts.House, "from the base wall into the house", "from the house into the base wall");

    /// <summary>Through the base wall to the outside air.</summary>
    public static Flow Outside { get; } =
        new("base-wall-air", Base.Id, Accounts.OutsideAir, "through the base wall to the outside air", "from the outside air into the base wall");

    /// <summary>Through the base wall into the ground it stands in; what the ground gives counts as heat that came in.</summary>
    public static Flow Ground { get; } = new("base-wall-ground", Base.Id, Accounts.Ground, "through the base wall into the ground", "out of the ground into the base wall");

    /// <summary>Through the base wall and back of it, mean of the hour.</summary>
    public static HourColumn BaseW { get; } = new("base_wall_w", "from the base wall", "W");

    internal static SourceKind RoomKind { get; } = new("room-behind", 60)
    {
        Flows = [Room],
        Columns = [RoomW],
        Doors = DoorUse.Sources,
    };

    internal static SourceKind BaseKind { get; } = new("base-wall", 61)
    {
        Flows = [Inside, Outside, Ground],
        Stores = [Base],
        Columns = [BaseW],
    };
}
