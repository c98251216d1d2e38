using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Plane;

/// <summary>Writes a schedule move by move, forward in time.</summary>
internal sealed class MoveLog
{
    private readonly double[] turn;
    private readonly double[] later;
    private readonly double[] share;
    private readonly int warmUpHours;
    private int written;
    private int moves;
    private double travel;

    public MoveLog(Winter winter, double restDeg)
    {
        (turn, later, share) = (new double[winter.Hours], new double[winter.Hours], new double[winter.Hours]);
        warmUpHours = winter.WarmUpHours;
        Turn = restDeg;
    }

    /// <summary>Where the mount stands now [°].</summary>
    public double Turn { get; private set; }

    /// <summary>A move at an instant within an hour.</summary>
    public void Move(double hour, double toDeg)
    {
        if (toDeg == Turn)
            return;
        var h = (int)hour;
        if (h >= turn.Length)
            return;
        HoldUntil(h);
        if (written == h)
        {
            (turn[h], share[h]) = (Turn, hour - h);
            written = h + 1;
        }

        later[h] = toDeg;
        Count(h, toDeg, 1);
    }

    /// <summary>A turn for one whole hour, reached by one start of the drive or several.</summary>
    public void Follow(int hour, double toDeg, int starts)
    {
        HoldUntil(hour);
        if (toDeg != Turn)
            Count(hour, toDeg, starts);
    }

    public MountSchedule Finish()
    {
        HoldUntil(turn.Length);
        return new() { TurnDeg = turn, LaterTurnDeg = later, ShareBefore = share, Moves = moves, TravelDeg = travel };
    }

    private void HoldUntil(int hour)
    {
        for (; written < hour; written++)
            (turn[written], later[written], share[written]) = (Turn, Turn, 1);
    }

    private void Count(int hour, double toDeg, int starts)
    {
        if (hour >= warmUpHours)
        {
            moves += starts;
            travel += Math.Abs(toDeg - Turn);
        }

        Turn = toDeg;
    }
}
