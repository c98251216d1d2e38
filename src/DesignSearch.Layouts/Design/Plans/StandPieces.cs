using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Design.Plans;

/// <summary>
/// Pieces of a frame by plain geometry; how it is braced is our own choice. Trestles stand a tenth of the width from either edge and
/// evenly between; legs meet the plate straight above their feet, or at its edge where the feet stand further out.
/// </summary>
internal static class StandPieces
{
    private const double Inset = 0.1;
    private const double Quarter = 0.25;

    // Trays, rails of a post's head: no further apart than this. Concrete under the end of a post; from its head down to the sleeve.
    private const double MostApartM = 1.5;
    private const double UnderPostM = 0.1;
    private const double SleeveOfChord = 0.3;

    // The trestles of a rocker spread by so much of their height, no less and no more than this share of the width.
    private const double Spread = 0.8;
    private const double LeastSpreadM = 0.6;

    // A stand against a wall is never reckoned flatter than this sine of its tilt.
    private const double LeastSine = 0.2;

    public static IEnumerable<Piece> Of(StandPlan stand) => stand switch
    {
        { Founding: Founding.Post } => OnPost(stand),
        { Axis: TurningAxis.Sloping } => Rocker(stand),
        { Founding: Founding.Wall } => OnWall(stand),
        _ => OnFeet(stand),
    };

    /// <summary>Where a frame meets the ground; none on a post or a wall.</summary>
    public static IReadOnlyList<Spot3> Feet(StandPlan stand)
    {
        if (stand.Founding is Founding.Post or Founding.Wall)
            return [];
        var (front, back) = FeetX(stand);
        if (stand.Axis != TurningAxis.Sloping)
            return [.. Rows(stand).SelectMany(y => new Spot3[] { new(front, y, 0), new(back, y, 0) })];
        return [.. Sides(stand, stand.ClearanceM).Select(y => new Spot3(front, y, 0)),
            .. Sides(stand, stand.ClearanceM + stand.RiseM).Select(y => new Spot3(back, y, 0))];
    }

    private static IEnumerable<Piece> OnFeet(StandPlan stand)
    {
        var (front, back) = FeetX(stand);
        var (low, high) = (On(stand, front), On(stand, back));
        var rows = Rows(stand);
        foreach (var y in rows)
        {
            var (frontFoot, backFoot) = (new Spot3(front, y, 0), new Spot3(back, y, 0));
            yield return Rail(stand, y);
            yield return new(StandPieceWords.FrontLeg, frontFoot, At(stand, low, y));
            yield return new(StandPieceWords.BackLeg, backFoot, At(stand, high, y));
            yield return new(
                stand.Founding == Founding.Ballast ? StandPieceWords.Tray : StandPieceWords.FootBeam, frontFoot, backFoot);
            yield return new(StandPieceWords.SideBrace, backFoot, At(stand, stand.ReachM / 2, y));
        }

        yield return new(StandPieceWords.BackBrace, new(back, rows[0], 0), At(stand, high, rows[1]));
        yield return new(StandPieceWords.BackBrace, new(back, rows[1], 0), At(stand, high, rows[0]));
        foreach (var piece in CrossRails(stand))
            yield return piece;
    }

    private static IEnumerable<Piece> OnWall(StandPlan stand)
    {
        var top = stand.ClearanceM + stand.RiseM;
        var foot = top - Math.Max(stand.RiseM, LeastSine * stand.ChordM);
        foreach (var y in Rows(stand))
        {
            yield return Rail(stand, y);
            yield return new(StandPieceWords.WallRail, new(stand.ReachM, y, foot), new(stand.ReachM, y, top));
            yield return new(StandPieceWords.WallStrut, new(stand.ReachM, y, foot), At(stand, 0, y));
        }

        foreach (var piece in CrossRails(stand))
            yield return piece;
    }

    private static IEnumerable<Piece> OnPost(StandPlan stand)
    {
        var (x, y) = (stand.ReachM / 2, stand.WidthM / 2);
        var head = At(stand, x, y);
        yield return new(StandPieceWords.Post, new(x, y, Math.Min(0, UnderPostM - stand.DepthM)), head);
        var sleeve = head with { Z = Math.Max(0, head.Z - (SleeveOfChord * stand.ChordM)) };
        foreach (var row in Rows(stand))
            yield return Rail(stand, row);
        foreach (var side in new[] { Inset * stand.WidthM, (1 - Inset) * stand.WidthM })
        {
            yield return new(StandPieceWords.Strut, sleeve, At(stand, Quarter * stand.ReachM, side));
            yield return new(StandPieceWords.Strut, sleeve, At(stand, (1 - Quarter) * stand.ReachM, side));
        }

        foreach (var piece in CrossRails(stand))
            yield return piece;
    }

    private static IEnumerable<Piece> Rocker(StandPlan stand)
    {
        var (front, back) = FeetX(stand);
        var middle = stand.WidthM / 2;
        var (low, high) = (At(stand, 0, middle), At(stand, stand.ReachM, middle));
        yield return new(StandPieceWords.AxisTube, low, high);
        foreach (var (name, x, end) in new[] { (StandPieceWords.FrontLeg, front, low), (StandPieceWords.BackLeg, back, high) })
        {
            var sides = Sides(stand, end.Z);
            foreach (var side in sides)
                yield return new(name, new(x, side, 0), end);
            yield return new(StandPieceWords.Spreader, new(x, sides[0], 0), new(x, sides[1], 0));
        }

        yield return new(StandPieceWords.FootBeam, new(front, middle, 0), new(back, middle, 0));
        foreach (var row in Rows(stand))
            yield return Rail(stand, row);
        foreach (var piece in CrossRails(stand))
            yield return piece;
    }

    // Under the middle of the plate, as the stand is reckoned.
    private static (double Front, double Back) FeetX(StandPlan stand) =>
        ((stand.ReachM - stand.FeetApartM) / 2, (stand.ReachM + stand.FeetApartM) / 2);

    private static double On(StandPlan stand, double x) => Math.Clamp(x, 0, stand.ReachM);

    // A point of the plate; an upright one is met at its lower edge in front and at its upper one behind.
    private static Spot3 At(StandPlan stand, double x, double y)
    {
        var share = stand.ReachM > 0 ? x / stand.ReachM : 0;
        return new(x, y, stand.ClearanceM + (share * stand.RiseM));
    }

    private static Piece Rail(StandPlan stand, double y) =>
        new(StandPieceWords.Rail, new(0, y, stand.ClearanceM), new(stand.ReachM, y, stand.ClearanceM + stand.RiseM));

    private static IEnumerable<Piece> CrossRails(StandPlan stand)
    {
        foreach (var share in new[] { Quarter, 1 - Quarter })
        {
            var (x, z) = (share * stand.ReachM, stand.ClearanceM + (share * stand.RiseM));
            yield return new(StandPieceWords.CrossRail, new(x, 0, z), new(x, stand.WidthM, z));
        }
    }

    private static List<double> Rows(StandPlan stand)
    {
        var byAnchors = stand.Axis == TurningAxis.None ? stand.AnchorsEach / 2 : 0;
        var byWidth = (1 - (2 * Inset)) * stand.WidthM / MostApartM;
        var count = Math.Max(2, (int)Math.Ceiling(byAnchors > 0 ? byAnchors : byWidth + 1));
        return [.. Enumerable.Range(0, count).Select(i => stand.WidthM * (Inset + ((1 - (2 * Inset)) * i / (count - 1))))];
    }

    private static double[] Sides(StandPlan stand, double heightM)
    {
        var half = Math.Max(LeastSpreadM, Spread * heightM) / 2;
        return [(stand.WidthM / 2) - half, (stand.WidthM / 2) + half];
    }
}
