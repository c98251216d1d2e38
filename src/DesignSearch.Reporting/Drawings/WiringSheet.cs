using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>
/// The wiring core by core. Each voltage has a frame of its own; in it each row of the wiring table has a strip of its own, one above
/// the other: fuse, contacts, terminals on the edge of the frame, the cable's cores, the device. Every line is level and stays in its
/// strip, so that none crosses another; only the rails at the left of a frame are upright, and rows hang on them by dots. Contacts in
/// one line must all be closed; contacts on lines of their own each command the relay by an input of their own.
/// </summary>
internal sealed class WiringSheet
{
    /// <summary>Edge of the frames, on which the terminals are.</summary>
    public const double TerminalX = 340;

    /// <summary>Width of the devices.</summary>
    public const double DeviceWidth = 140;

    private const double FrameX = 8;
    private const double DeviceX = 620;
    private const double RailX = 22;
    private const double FuseX = 34;
    private const double SharedX = 64;
    private const double ContactX = 84;
    private const double ContactStep = 36;
    private const double CoilX = TerminalX - 66;
    private const int MostContacts = 4;
    private const double Title = 26;
    private const double Gap = 14;

    // What prints on one side of paper beside a heading.
    private const double MostHeight = 960;

    private readonly IReadOnlyList<Wire> wires;
    private readonly WiringStrips strips;
    private readonly Dictionary<string, int> onFuse;
    private readonly List<Sheet> sheets = [];
    private readonly List<string> told = [];
    private readonly Dictionary<string, (double First, double Last)> shared = [];
    private string feederFuse = "";
    private (double First, double Last) rail;
    private double y;

    private WiringSheet(JudgedLayout layout)
    {
        wires = layout.Wires;
        strips = new(layout);
        onFuse = wires.Where(w => w.FuseTag.Length > 0).GroupBy(w => w.FuseTag)
            .ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        NewSheet();
        foreach (var group in wires.GroupBy(w => (w.Volts >= SupplyPlan.MainsVolts, WiringStrips.IsSource(w), WiringStrips.IsSource(w) ? 0 : w.Volts))
            .OrderByDescending(g => g.Key))
            Group(group.First().Volts, [.. group]);
    }

    /// <summary>What was drawn, a side of paper each.</summary>
    public IReadOnlyList<Sheet> Sheets => sheets;

    /// <summary>Rows that are told and not drawn: what sits in the box on a row with others.</summary>
    public IReadOnlyList<string> Told => told;

    /// <summary>The wiring of a layout.</summary>
    public static WiringSheet Of(JudgedLayout layout) => new(layout);

    private Sheet Now => sheets[^1];

    private void NewSheet()
    {
        sheets.Add(new());
        y = 8;
    }

    private void Group(double volts, IReadOnlyList<Wire> rows)
    {
        feederFuse = rows.FirstOrDefault(w => w.IsFeeder)?.FuseTag ?? "";
        List<WiringStrip> own = [];
        foreach (var byFuse in rows.GroupBy(w => w.FuseTag))
        {
            foreach (var wire in byFuse)
            {
                if (volts == 0 && wire.Ends.Count == 0)
                    told.Add(PictureWords.InBox(wire));
                else
                    own.Add(strips.Of(wire));
            }
        }

        if (own.Count == 0)
            return;
        var title = rows.Any(WiringStrips.IsSource) ? PictureWords.SourceTitle : PictureWords.BoxTitle(
            volts, wires.Any(w => w.Volts is > 0 and < SupplyPlan.MainsVolts));
        var top = Open(title, own[0]);
        foreach (var strip in own)
        {
            if (y + strip.Height > MostHeight)
            {
                Close(top);
                NewSheet();
                top = Open(title + PictureWords.GoesOn, strip);
            }

            Draw(strip);
            y += strip.Height;
        }

        Close(top);
        y += Gap;
    }

    private double Open(string title, WiringStrip first)
    {
        if (y > 8 && y + Title + first.Height > MostHeight)
            NewSheet();
        (rail, var top) = ((0, 0), y);
        shared.Clear();
        Now.Words(title, FrameX + 8, y + 16);
        y += Title;
        return top;
    }

    private void Close(double top)
    {
        if (rail.Last > rail.First)
            Now.Line("wire", (RailX, rail.First), (RailX, rail.Last));
        foreach (var (first, last) in shared.Values.Where(s => s.Last > s.First))
            Now.Line("wire", (SharedX, first), (SharedX, last));
        Now.Closed("group", (FrameX, top), (TerminalX, top), (TerminalX, y), (FrameX, y));
    }

    private void Draw(WiringStrip strip)
    {
        for (var i = 0; i < strip.Left.Count; i++)
            Now.Words(strip.Left[i], SharedX + 8, y + (WiringStrip.TextStep * (i + 1)));
        for (var i = 0; i < strip.Right.Count; i++)
            Now.Words(strip.Right[i], TerminalX + 10, y + (WiringStrip.TextStep * (i + 1)));
        var line = y + strip.FirstLine;
        if (strip.Cores.Count > 0)
            Cores(strip, line);
        else
            InBox(strip, line);
    }

    private void Cores(WiringStrip strip, double line)
    {
        for (var i = 0; i < strip.Cores.Count; i++)
        {
            var (core, at) = (strip.Cores[i], line + strip.LineAt(i));
            var begins = TerminalX - 56;
            if (i == 0 && strip.Wire.Volts > 0 && !WiringStrips.IsSource(strip.Wire))
                begins = Contacts(strip, strip.Series, at);
            else if (strip.Component?.Symbol == Symbol.Motor && i == 1)
                begins = OtherWay(strip, at);
            Now.Line("wire", (begins, at), (DeviceX, at));
            if (core.Carries == "PE")
                Now.Sign(SymbolDrawing.Earth, TerminalX - 78, at - 12);
            Now.Circle("terminal", TerminalX, at, 3);
            if (core.Terminal.Length > 0)
                Now.Words(core.Terminal, TerminalX - 44, at - 4);
            Now.Words(PictureWords.CoreIs(core), TerminalX + 10, at - 4);
        }

        if ((strip.Wire.IsFeeder || WiringStrips.IsSource(strip.Wire)) && strip.Wire.FuseTag.Length > 0)
            Now.Sign(FuseSign(strip.Wire), DeviceX - 40, line - 12);
        if (strip.HasStops)
            Stops(line);
        if (strip.Wire.EndsAtDevice && strip.Wire.Volts == 0)
            Now.Sign(SymbolDrawing.EndSwitch, DeviceX - 50, line - 12);
        Device(strip, line, DeviceX);
    }

    // Two end switches in the motor's line, a diode across each, the two pointing opposite ways.
    private void Stops(double line)
    {
        foreach (var (x, diode) in new[] { (DeviceX - 110, SymbolDrawing.Diode), (DeviceX - 54, SymbolDrawing.DiodeBack) })
        {
            Now.Sign(SymbolDrawing.EndSwitch, x, line - 12);
            Now.Line("wire", (x - 6, line), (x - 6, line + 24), (x, line + 24));
            Now.Line("wire", (x + 24, line + 24), (x + 30, line + 24), (x + 30, line));
            Now.Sign(diode, x, line + 12);
            Now.Circle("full", x - 6, line, 2);
            Now.Circle("full", x + 30, line, 2);
        }
    }

    // The other core of a motor that turns both ways: the interlock gives it what the first has not.
    private double OtherWay(WiringStrip strip, double at)
    {
        if (strip.Series.Count == 0)
            return TerminalX - 56;
        Now.Words(PictureWords.Return(strip.Wire), SharedX - 8, at + 4);
        Now.Sign(SymbolDrawing.ContactOf(strip.Series[0].Symbol), ContactX, at - 12);
        return ContactX + 24;
    }

    private void InBox(WiringStrip strip, double line)
    {
        var wire = strip.Wire;
        var isPlugged = wire.Volts >= SupplyPlan.MainsVolts && strip.Component is not { Symbol: Symbol.Relay };
        if (isPlugged)
        {
            var end = Contacts(strip, strip.Series, line);
            Now.Line("wire", (end, line), (TerminalX, line));
            Now.Sign(SymbolDrawing.Socket, TerminalX, line - 12);
            Now.Line("wire", (TerminalX + 24, line), (DeviceX, line));
            Device(strip, line, DeviceX);
            return;
        }

        var rows = Math.Max(1, strip.Inputs.Count);
        for (var i = 0; i < rows; i++)
        {
            var at = line + strip.LineAt(i);
            var end = Contacts(strip, strip.Inputs.Count > 1 ? [strip.Inputs[i]] : strip.Series, at);
            Now.Line("wire", (end, at), (CoilX, at));
            if (rows > 1)
                Now.Words(PictureWords.Number(i + 1), CoilX + 5, at + 4);
        }

        var last = line + strip.LineAt(rows - 1);
        if (rows == 1 && strip.Component?.Symbol == Symbol.Relay)
        {
            Now.Sign(SymbolDrawing.Coil, CoilX, line - 12);
            Now.Words("A1", CoilX - 12, line - 6);
            Now.Words("A2", CoilX + 22, line - 6);
        }
        else
        {
            Now.Closed("box", (CoilX, line - 9), (CoilX + 24, line - 9), (CoilX + 24, last + 9), (CoilX, last + 9));
        }

        Now.Line("wire", (CoilX + 24, line), (TerminalX - 30, line));
        Now.Words(PictureWords.Return(wire), TerminalX - 28, line + 4);
        Device(strip, line, TerminalX + 12);
    }

    private double Contacts(WiringStrip strip, IReadOnlyList<Component> contacts, double line)
    {
        var x = Begin(strip.Wire, line);
        for (var i = 0; i < Math.Min(MostContacts, contacts.Count); i++)
        {
            var at = ContactX + (ContactStep * i);
            Now.Line("wire", (x, line), (at, line));
            Now.Sign(SymbolDrawing.ContactOf(contacts[i].Symbol), at, line - 12);
            x = at + 24;
        }

        return x;
    }

    // From the rail, through the fuse where the row has one of its own; rows that share one hang on a rail behind it.
    private double Begin(Wire wire, double line)
    {
        var isShared = !wire.IsFeeder && wire.FuseTag.Length > 0 && wire.FuseTag != feederFuse && onFuse[wire.FuseTag] > 1;
        if (isShared && shared.TryGetValue(wire.FuseTag, out var behind))
        {
            shared[wire.FuseTag] = (behind.First, line);
            Now.Circle("full", SharedX, line, 2);
            return SharedX;
        }

        rail = (rail.First == 0 ? line : rail.First, line);
        Now.Circle("full", RailX, line, 2);
        if (wire.IsFeeder || wire.FuseTag.Length == 0 || wire.FuseTag == feederFuse)
            return RailX;
        Now.Line("wire", (RailX, line), (FuseX, line));
        Now.Sign(FuseSign(wire), FuseX, line - 12);
        if (!isShared)
            return FuseX + 24;
        Now.Line("wire", (FuseX + 24, line), (SharedX, line));
        Now.Circle("full", SharedX, line, 2);
        shared[wire.FuseTag] = (line, line);
        return SharedX;
    }

    private static Html.Markup FuseSign(Wire wire) => wire.Volts >= SupplyPlan.MainsVolts ? SymbolDrawing.Breaker : SymbolDrawing.Fuse;

    private void Device(WiringStrip strip, double line, double x)
    {
        var (top, high) = (line - (WiringStrip.CoreStep / 2), strip.DeviceHeight);
        Now.Closed("box", (x, top), (x + DeviceWidth, top), (x + DeviceWidth, top + high), (x, top + high));
        var sign = strip.Component is { } component ? SymbolDrawing.Of(component.Symbol) : Html.Markup.None;
        if (sign != Html.Markup.None)
            Now.Sign(sign, x + (DeviceWidth / 2) - 12, top + 3);
        for (var i = 0; i < strip.Names.Count; i++)
            Now.Words(strip.Names[i], x + 8, top + (sign == Html.Markup.None ? 18 : 38) + (WiringStrip.TextStep * i));
    }
}
