using DesignSearch.Layouts.Design.Schemes;

namespace DesignSearch.Reporting.Drawings;

/// <summary>
/// Part of a scheme laid out on a sheet. Components stand in columns in the direction of flow. Every joint has upright and level tracks
/// of its own, upright ones between the columns and level ones above all boxes, so that no two lines ever lie on each other and none
/// passes under a box: where lines meet they cross squarely, which joins nothing.
/// </summary>
internal sealed class SchemeSheet
{
    /// <summary>Width of every box.</summary>
    public const int BoxWidth = 116;

    /// <summary>From the upper edge of a box to the first line of its name where a sign stands above it.</summary>
    public const int UnderSign = 40;

    /// <summary>The same without a sign.</summary>
    public const int UnderEdge = 24;

    /// <summary>From line to line of a name.</summary>
    public const int LineHeight = 13;

    private const int Track = 8;
    private const int PortGap = 12;
    private const int RowGap = 24;
    private const int LeastHeight = 60;
    private const int Edge = 12;
    private const int Sweeps = 8;
    private const int SignsPerLine = 18;
    private const int UnderName = 8;

    private readonly List<Joint> joints;
    private readonly List<string> names;
    private readonly int[] layers;

    private SchemeSheet(Scheme scheme, IReadOnlySet<Medium> media)
    {
        joints = [.. scheme.Joints.Where(j => media.Contains(j.Medium))];
        var ends = joints.SelectMany(j => new[] { j.From, j.To }).ToHashSet(StringComparer.Ordinal);
        names = [.. scheme.Components.Select(c => c.Name).Where(ends.Contains)];
        layers = Layers();
        Place();
    }

    /// <summary>The components.</summary>
    public IReadOnlyList<PlacedBox> Boxes { get; private set; } = [];

    /// <summary>The joints.</summary>
    public IReadOnlyList<PlacedLine> Lines { get; private set; } = [];

    /// <summary>Width of the sheet.</summary>
    public int Width { get; private set; }

    /// <summary>Height of the sheet.</summary>
    public int Height { get; private set; }

    /// <summary>Lays out all that some media join.</summary>
    /// <param name="scheme">The scheme.</param>
    /// <param name="media">The media.</param>
    public static SchemeSheet Of(Scheme scheme, params Medium[] media) => new(scheme, media.ToHashSet());

    /// <summary>A name in lines that fit a box.</summary>
    /// <param name="name">The name.</param>
    public static IReadOnlyList<string> NameLines(string name)
    {
        var lines = new List<string> { "" };
        foreach (var word in name.Split(' '))
        {
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + word.Length > SignsPerLine)
                lines.Add("");
            lines[^1] += lines[^1].Length == 0 ? word : " " + word;
        }

        return lines;
    }

    private int IndexOf(string name) => names.IndexOf(name);

    // The longest way from a beginning; what leads back into a way that is being followed closes a ring and counts for nothing.
    private int[] Layers()
    {
        var (layer, state, order) = (new int[names.Count], new int[names.Count], new List<int>());
        var forward = new HashSet<int>();
        void Follow(int at)
        {
            state[at] = 1;
            for (var j = 0; j < joints.Count; j++)
            {
                if (joints[j].From != names[at])
                    continue;
                var to = IndexOf(joints[j].To);
                if (state[to] != 1)
                    forward.Add(j);
                if (state[to] == 0)
                    Follow(to);
            }

            state[at] = 2;
            order.Add(at);
        }

        for (var i = 0; i < names.Count; i++)
        {
            if (state[i] == 0)
                Follow(i);
        }

        order.Reverse();
        foreach (var at in order)
        {
            foreach (var j in forward.Where(j => joints[j].From == names[at]))
                layer[IndexOf(joints[j].To)] = Math.Max(layer[IndexOf(joints[j].To)], layer[at] + 1);
        }

        return layer;
    }

    private void Place()
    {
        var count = names.Count == 0 ? 0 : layers.Max() + 1;
        var columns = Enumerable.Range(0, count).Select(l => Enumerable.Range(0, names.Count).Where(i => layers[i] == l).ToList()).ToList();
        var rows = new double[names.Count];
        foreach (var column in columns)
            Number(column, rows);
        // Each component to the middle of its neighbours, a few times over.
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            foreach (var column in sweep % 2 == 0 ? columns : columns.AsEnumerable().Reverse())
            {
                var middle = column.ToDictionary(i => i, i => Neighbours(i).Select(n => rows[n]).DefaultIfEmpty(rows[i]).Average());
                column.Sort((a, b) => middle[a].CompareTo(middle[b]) is var c && c != 0 ? c : a.CompareTo(b));
                Number(column, rows);
            }
        }

        var isLong = joints.Select(j => layers[IndexOf(j.To)] != layers[IndexOf(j.From)] + 1).ToArray();
        var top = Edge + (Track * (isLong.Count(l => l) + 1));
        top += (PortGap - (top % PortGap)) % PortGap;
        var tracks = Tracks(columns.Count, isLong);
        Boxes = PlaceBoxes(columns, tracks, top);
        Lines = PlaceLines(tracks, isLong);
        Width = Boxes.Count == 0 ? 0 : Boxes.Max(b => b.X) + BoxWidth + Edge + (Track * (tracks[^1].Count + 1));
        Height = Boxes.Count == 0 ? 0 : Boxes.Max(b => b.Y + b.Height) + Edge;
    }

    private static void Number(List<int> column, double[] rows)
    {
        for (var r = 0; r < column.Count; r++)
            rows[column[r]] = r - ((column.Count - 1) / 2.0);
    }

    private IEnumerable<int> Neighbours(int at) =>
        joints.Where(j => j.From == names[at]).Select(j => IndexOf(j.To))
            .Concat(joints.Where(j => j.To == names[at]).Select(j => IndexOf(j.From)));

    // What needs an upright track, channel by channel: channel 0 lies before the first column. A long joint needs two: where it leaves
    // and where it arrives.
    private List<List<(int Joint, bool Arrives)>> Tracks(int columns, bool[] isLong)
    {
        var tracks = Enumerable.Range(0, columns + 1).Select(_ => new List<(int, bool)>()).ToList();
        for (var j = 0; j < joints.Count; j++)
        {
            tracks[layers[IndexOf(joints[j].From)] + 1].Add((j, false));
            if (isLong[j])
                tracks[layers[IndexOf(joints[j].To)]].Add((j, true));
        }

        return tracks;
    }

    private List<PlacedBox> PlaceBoxes(List<List<int>> columns, List<List<(int, bool)>> tracks, int top)
    {
        int Ports(int i) => Math.Max(joints.Count(j => j.From == names[i]), joints.Count(j => j.To == names[i]));
        // Whole gaps, so that ends stand level in steps of a gap wherever a box begins.
        int HeightOf(int i)
        {
            var name = UnderSign + (LineHeight * (NameLines(names[i]).Count - 1)) + UnderName;
            return PortGap * (int)Math.Ceiling(Math.Max(Math.Max(LeastHeight, PortGap * (Ports(i) + 1)), name) / (double)PortGap);
        }

        var tallest = columns.Select(c => c.Sum(i => HeightOf(i) + RowGap)).DefaultIfEmpty(0).Max();
        var (boxes, x) = (new List<PlacedBox>(), Edge);
        for (var l = 0; l < columns.Count; l++)
        {
            x += Track * (tracks[l].Count + 1);
            var spare = (tallest - columns[l].Sum(i => HeightOf(i) + RowGap)) / 2;
            var y = top + spare - (spare % PortGap);
            foreach (var i in columns[l])
            {
                boxes.Add(new(names[i], l, x, y, HeightOf(i)));
                y += HeightOf(i) + RowGap;
            }

            x += BoxWidth;
        }

        return boxes;
    }

    private List<int> InOrder(Func<int, bool> which, Func<int, int> by) =>
        [.. Enumerable.Range(0, joints.Count).Where(which).OrderBy(by).ThenBy(j => j)];

    private List<PlacedLine> PlaceLines(List<List<(int Joint, bool Arrives)>> tracks, bool[] isLong)
    {
        var box = Boxes.ToDictionary(b => b.Name, StringComparer.Ordinal);
        int Middle(string name) => box[name].Y + (box[name].Height / 2);
        // Ends on a box in the order of what lies at their other ends; arriving ones half a step lower, so that no two are ever level.
        var (leaves, arrives) = (new int[joints.Count], new int[joints.Count]);
        foreach (var b in Boxes)
        {
            var outgoing = InOrder(j => joints[j].From == b.Name, j => isLong[j] ? 0 : Middle(joints[j].To));
            var incoming = InOrder(j => joints[j].To == b.Name, j => isLong[j] ? 0 : Middle(joints[j].From));
            for (var p = 0; p < outgoing.Count; p++)
                leaves[outgoing[p]] = b.Y + (PortGap / 2) + (PortGap * p);
            for (var p = 0; p < incoming.Count; p++)
                arrives[incoming[p]] = b.Y + (PortGap * (p + 1));
        }

        var track = new Dictionary<(int, bool), int>();
        for (var channel = 0; channel < tracks.Count; channel++)
        {
            var right = channel < tracks.Count - 1
                ? Boxes.First(b => b.Layer == channel).X
                : Boxes.Where(b => b.Layer == channel - 1).Select(b => b.X + BoxWidth).DefaultIfEmpty(0).Max()
                    + (Track * (tracks[channel].Count + 1));
            var ordered = tracks[channel].OrderBy(t => t.Arrives ? arrives[t.Joint] : leaves[t.Joint]).ThenBy(t => t).ToList();
            for (var t = 0; t < ordered.Count; t++)
                track[ordered[t]] = right - (Track * (t + 1));
        }

        var (lines, lane) = (new List<PlacedLine>(), Edge);
        for (var j = 0; j < joints.Count; j++)
        {
            var (from, to, first) = (box[joints[j].From].X + BoxWidth, box[joints[j].To].X, track[(j, false)]);
            List<(int, int)> points = [(from, leaves[j]), (first, leaves[j])];
            if (isLong[j])
            {
                lane += Track;
                var last = track[(j, true)];
                points.AddRange([(first, lane), (last, lane), (last, arrives[j])]);
            }
            else
            {
                points.Add((first, arrives[j]));
            }

            points.Add((to, arrives[j]));
            lines.Add(new(j + 1, joints[j], points));
        }

        return lines;
    }
}
