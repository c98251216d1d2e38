using W = DesignSearch.Runs.Starting.ShapeQuestionWords;

namespace DesignSearch.Runs.Starting;

/// <summary>The questions about the shape of the house and its solid walls.</summary>
internal static class ShapeQuestions
{
    private const string Table = "greenhouse";
    private const string Gable = "gable";
    private const string LeanTo = "lean-to";
    private const string Tunnel = "tunnel";
    private const string Azimuth = "back_wall_azimuth_deg";
    private const string Top = "back_wall_top_m";
    private const string U = "back_wall_u_w_per_m2k";
    private const string Capacity = "back_wall_capacity_kj_per_m2k";
    private const string Behind = "behind_back_wall";
    private const string RoomC = "room_behind_c";
    private const string Base = "base_wall_m";
    private const string BaseU = "base_wall_u_w_per_m2k";
    private const string BaseCapacity = "base_wall_capacity_kj_per_m2k";
    private const string Below = "floor_below_m";
    private const string Ridge = "ridge_azimuth_deg";
    private const double UsualTopM = 5;
    private const double HighestM = 40;

    private static readonly string[] WallKeys = [Azimuth, Top, U, Capacity, Behind, RoomC];
    private static readonly string[] Sides = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    /// <summary>What it looks like; asked first.</summary>
    public static Question Shape { get; } = new()
    {
        Text = _ => W.Shape,
        WhereFrom = W.ShapeFrom,
        Picture = W.ShapePicture,
        Line = (Table, "shape"),
        Standing = c => c.Words(Table, "shape") ?? Gable,
        Usual = _ => Gable,
        Take = TakeShape,
    };

    /// <summary>Low and high edge, as the shape calls them.</summary>
    public static Question Heights { get; } = new()
    {
        Text = c => c.Facts.Shape switch { LeanTo => W.LeanToHeights, Tunnel => W.TunnelHeights, _ => QuestionWords.Heights },
        WhereFrom = QuestionWords.HeightsFrom,
        Picture = QuestionWords.HeightsPicture,
        Line = (Table, "ridge_m"),
        Standing = c => c.Number(Table, "ridge_m") is { } top ? AnswerReading.Typed(" ", c.Number(Table, "eaves_m") ?? c.Number(Table, Base) ?? 0, top) : null,
        Usual = c => c.Facts.Shape == Tunnel ? AnswerReading.Typed(" ", 0, c.Facts.WidthM / 2) : "1.8 2.6",
        Take = TakeHeights,
    };

    /// <summary>The questions that only a lean-to is asked.</summary>
    public static IReadOnlyList<Question> Wall { get; } =
    [
        new()
        {
            Text = _ => W.Side, WhereFrom = W.SideFrom, Line = (Table, Azimuth), IsAsked = IsLeanTo,
            Standing = c => One(c, Azimuth), Usual = _ => "north", Take = TakeSide,
        },
        new()
        {
            Text = _ => W.Behind, WhereFrom = W.BehindFrom, Line = (Table, Behind), IsAsked = IsLeanTo,
            Standing = c => c.Words(Table, Behind) switch { null => null, "heated room" => One(c, RoomC) ?? "20", "outside" => "outside", _ => "unheated" },
            Usual = _ => "20", Take = TakeBehind,
        },
        new()
        {
            Text = _ => W.WallOf, WhereFrom = W.WallOfFrom, Line = (Table, U), IsAsked = IsLeanTo,
            Standing = c => Named(c, U, Capacity), Usual = _ => "brick", Take = (c, a) => TakeKind(c, a, U, Capacity),
        },
        new()
        {
            Text = _ => W.Top, WhereFrom = W.TopFrom, Line = (Table, Top), IsAsked = IsLeanTo,
            Standing = c => One(c, Top), Usual = c => AnswerReading.Typed("", Math.Max(UsualTopM, c.Facts.RidgeM)), Take = TakeTop,
        },
    ];

    /// <summary>The questions about a wall round the foot.</summary>
    public static IReadOnlyList<Question> Foot { get; } =
    [
        new()
        {
            Text = _ => W.Base, WhereFrom = W.BaseFrom, Line = (Table, Base), Standing = c => One(c, Base) ?? "0", Usual = _ => "0", Take = TakeBase,
        },
        new()
        {
            Text = _ => W.BaseOf, WhereFrom = W.WallOfFrom, Line = (Table, BaseU), IsAsked = c => c.Facts.BaseWallM > 0,
            Standing = c => Named(c, BaseU, BaseCapacity), Usual = _ => "brick", Take = (c, a) => TakeKind(c, a, BaseU, BaseCapacity),
        },
        new()
        {
            Text = _ => W.Below, WhereFrom = W.BelowFrom, Line = (Table, Below), IsAsked = c => c.Facts.BaseWallM > 0,
            Standing = c => One(c, Below) ?? "0", Usual = _ => "0", Take = TakeBelow,
        },
    ];

    /// <summary>True for what leans on a wall, which is not asked where its ridge runs.</summary>
    public static bool IsLeanTo(NewCase c) => c.Facts.Shape == LeanTo;

    // What the shape asks for is written at once, so that the file is whole whatever is answered next.
    private static string? TakeShape(NewCase c, string answer)
    {
        if (AnswerReading.Word(answer, Gable, LeanTo, Tunnel) is not { } shape)
            return W.ShapeExpected;
        c.Facts.Shape = shape;
        c.Scenario.Set(Table, "shape", shape);
        if (shape == LeanTo)
        {
            c.Scenario.Leave(Table, Ridge);
            if (c.Words(Table, Behind) is not null)
                return null;
            TakeSide(c, "north");
            TakeKind(c, "brick", U, Capacity);
            TakeBehind(c, "20");
            c.Scenario.Set(Table, Top, UsualTopM);
            return null;
        }

        foreach (var key in WallKeys)
            c.Scenario.Leave(Table, key);
        if (c.Number(Table, Ridge) is null)
            c.Scenario.Set(Table, Ridge, 90);
        return null;
    }

    private static string? TakeHeights(NewCase c, string answer)
    {
        var isTunnel = c.Facts.Shape == Tunnel;
        if (AnswerReading.Numbers(answer, (isTunnel ? 0 : 0.3, 6), (0.5, 10)) is not [var low, var high] || high <= low)
            return QuestionWords.HeightsExpected;
        if (isTunnel && high - low > c.Facts.WidthM / 2 + 1e-9)
            return W.HoopExpected(c.Facts.WidthM / 2);
        (c.Facts.EavesM, c.Facts.RidgeM) = (low, high);
        c.Scenario.Set(Table, "eaves_m", low);
        c.Scenario.Set(Table, "ridge_m", high);
        return null;
    }

    private static string? TakeSide(NewCase c, string answer)
    {
        if (AnswerReading.Word(answer, Sides) is { } side)
            c.Scenario.Set(Table, Azimuth, 45 * Array.IndexOf(Sides, side));
        else if (AnswerReading.Numbers(answer, (0, 360)) is [var degrees])
            c.Scenario.Set(Table, Azimuth, degrees);
        else
            return W.SideExpected;
        return null;
    }

    private static string? TakeBehind(NewCase c, string answer)
    {
        if (AnswerReading.Numbers(answer, (0, 35)) is [var celsius])
        {
            c.Scenario.Set(Table, Behind, "heated room");
            c.Scenario.Set(Table, RoomC, celsius);
            return null;
        }

        if (AnswerReading.Word(answer, "unheated", "outside") is not { } word)
            return W.BehindExpected;
        c.Scenario.Set(Table, Behind, word == "outside" ? word : "unheated room");
        c.Scenario.Leave(Table, RoomC);
        return null;
    }

    private static string? TakeTop(NewCase c, string answer)
    {
        if (AnswerReading.Numbers(answer, (c.Facts.RidgeM, HighestM)) is not [var top])
            return W.TopExpected(c.Facts.RidgeM);
        c.Scenario.Set(Table, Top, top);
        return null;
    }

    private static string? TakeBase(NewCase c, string answer)
    {
        if (AnswerReading.Numbers(answer, (0, Math.Min(3, c.Facts.EavesM))) is not [var height])
            return W.BaseExpected(Math.Min(3, c.Facts.EavesM));
        c.Facts.BaseWallM = height;
        if (height > 0)
        {
            c.Scenario.Set(Table, Base, height);
            if (c.Number(Table, BaseU) is null)
                TakeKind(c, "brick", BaseU, BaseCapacity);
            return null;
        }

        foreach (var key in (string[])[Base, BaseU, BaseCapacity, Below])
            c.Scenario.Leave(Table, key);
        return null;
    }

    private static string? TakeBelow(NewCase c, string answer)
    {
        if (AnswerReading.Numbers(answer, (0, c.Facts.BaseWallM)) is not [var below])
            return W.BelowExpected(c.Facts.BaseWallM);
        if (below > 0)
            c.Scenario.Set(Table, Below, below);
        else
            c.Scenario.Leave(Table, Below);
        return null;
    }

    // A wall with figures of its own has no word: an empty line leaves it.
    private static string? Named(NewCase c, string u, string capacity) => c.Number(Table, u) is { } value
        ? WallKind.All.FirstOrDefault(k => k.UWPerM2K == value && k.CapacityKjPerM2K == c.Number(Table, capacity))?.Word ?? "U " + AnswerReading.Typed("", value)
        : null;

    private static string? TakeKind(NewCase c, string answer, string u, string capacity)
    {
        if (!c.IsNew && answer == Named(c, u, capacity))
            return null;
        if (AnswerReading.Word(answer, WallKind.Words) is not { } word)
            return W.WallOfExpected;
        var kind = WallKind.All.First(k => k.Word == word);
        c.Scenario.Set(Table, u, kind.UWPerM2K);
        c.Scenario.Set(Table, capacity, kind.CapacityKjPerM2K);
        return null;
    }

    private static string? One(NewCase c, string key) => c.Number(Table, key) is { } value ? AnswerReading.Typed("", value) : null;
}
