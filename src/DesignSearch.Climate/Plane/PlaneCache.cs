using System.Runtime.CompilerServices;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Plane;

/// <summary>Keeps plane irradiance that was asked for lately, up to a bound on memory. Safe to use from several threads.</summary>
/// <remarks>The same winter object and an equal mount give the same result object while it is kept.</remarks>
/// <param name="capacityBytes">Bound on the arrays kept [bytes]; one result is always kept, however large.</param>
/// <param name="horizon">Obstacles around the collector, or none.</param>
/// <param name="split">How the diffuse light is spread over the sky.</param>
public sealed class PlaneCache(long capacityBytes, HorizonProfile? horizon = null, SkySplit split = SkySplit.Perez)
{
    private readonly Lock gate = new();
    private readonly ConditionalWeakTable<Winter, WinterLight> lights = [];
    private readonly Dictionary<(Winter Winter, Mount Mount), LinkedListNode<Kept>> known = [];
    private readonly LinkedList<Kept> byAge = [];
    private long bytes;

    /// <summary>Bytes of the arrays held now.</summary>
    internal long Bytes
    {
        get
        {
            lock (gate)
                return bytes;
        }
    }

    /// <summary>The irradiance of a mount through a winter, computed when it is not kept.</summary>
    /// <param name="winter">The winter; the same one where every array is the same.</param>
    /// <param name="mount">The mount; told apart by value.</param>
    public PlaneIrradiance Get(Winter winter, Mount mount)
    {
        var key = (winter, mount.Kind == MountKind.Fixed ? Mount.FixedAt(mount.TiltDeg, mount.AzimuthDeg) : mount);
        Lazy<PlaneIrradiance> plane;
        lock (gate)
        {
            if (known.TryGetValue(key, out var node))
            {
                byAge.Remove(node);
            }
            else
            {
                var light = lights.GetValue(winter, w => new WinterLight(w, horizon, split));
                node = new(new(key, new(() => PlaneModel.For(light, key.Item2)), 4L * sizeof(double) * winter.Hours));
                known.Add(key, node);
                bytes += node.Value.Bytes;
            }

            byAge.AddFirst(node);
            DropOldest();
            plane = node.Value.Plane;
        }

        return plane.Value;
    }

    private void DropOldest()
    {
        while (bytes > capacityBytes && byAge.Count > 1)
        {
            var oldest = byAge.Last!;
            byAge.RemoveLast();
            known.Remove(oldest.Value.Key);
            bytes -= oldest.Value.Bytes;
        }
    }

    private sealed record Kept((Winter Winter, Mount Mount) Key, Lazy<PlaneIrradiance> Plane, long Bytes);
}
