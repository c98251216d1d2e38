using System.Text;
using System.Text.Json.Nodes;

namespace DesignSearch.Toughness.Tests;

/// <summary>Puts a value of another kind into a random place of a JSON document, or takes one away.</summary>
internal static class JsonSwap
{
    /// <summary>A spoilt copy; the same seed spoils it the same way.</summary>
    public static byte[] Spoil(int seed, byte[] original)
    {
        var random = new Random(seed);
        if (random.Next(200) == 0)
            return Encoding.UTF8.GetBytes(Other(random)?.ToJsonString() ?? "null");
        var root = JsonNode.Parse(original)!;
        for (var strokes = random.Next(1, 4); strokes > 0; strokes--)
        {
            var all = new List<JsonNode>();
            Gather(root, all);
            var node = all[random.Next(all.Count)];
            if (node.Parent is JsonObject named)
                Swap(named, node.GetPropertyName(), random);
            else if (node.Parent is JsonArray list)
                Swap(list, node.GetElementIndex(), random);
        }

        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static void Swap(JsonObject named, string key, Random random)
    {
        if (random.Next(6) == 0)
            named.Remove(key);
        else
            named[key] = Other(random);
    }

    private static void Swap(JsonArray list, int index, Random random)
    {
        if (random.Next(6) == 0)
            list.RemoveAt(index);
        else if (random.Next(6) == 0)
            list.Add(list[index]!.DeepClone());
        else
            list[index] = Other(random);
    }

    private static JsonNode? Other(Random random) => random.Next(14) switch
    {
        0 => null,
        1 => JsonValue.Create(0),
        2 => JsonValue.Create(-1),
        3 => JsonValue.Create(1e300),
        4 => JsonValue.Create(2.5),
        5 => JsonValue.Create(99_999_999_999L),
        6 => JsonValue.Create("2"),
        7 => JsonValue.Create(""),
        8 => JsonValue.Create("\u001b[2J\u202e"),
        9 => JsonValue.Create(true),
        10 => new JsonArray(),
        11 => new JsonArray(new JsonArray(1)),
        12 => new JsonObject(),
        _ => JsonValue.Create("2001-02-03T04:05:06"),
    };

    private static void Gather(JsonNode node, List<JsonNode> all)
    {
        all.Add(node);
        var inner = node is JsonObject named ? named.Select(p => p.Value) : node as IEnumerable<JsonNode?> ?? [];
        foreach (var one in inner.OfType<JsonNode>())
            Gather(one, all);
    }
}
