using System.Reflection;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;
using DesignSearch.Parts.Catalogues;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>What nobody in src uses does not stand in src; a formula that only tests call proves nothing about the product.</summary>
public sealed class CallersTests
{
    // Each by name, with its reason.
    private static readonly Dictionary<string, string> Known = new()
    {
        ["Stock.Of(IEnumerable)"] = "how tests own parts",
        ["Catalogue.Of(IEnumerable)"] = "how tests make a catalogue",
        ["Pricing.Total(IEnumerable)"] = "what a bill comes to; the tests hold the search's own sum against it",
        ["Check..ctor(String, String, Boolean, Double, String, String)"] = "how a stored run is read back",
        ["EnergyBooks..ctor(IReadOnlyList, IReadOnlyList, IReadOnlyList)"] = "how a stored run is read back",
        ["CsvColumn.Expected"] = "docs/parts.md is held against it by a test",
        ["PartKind.Columns"] = "docs/parts.md is held against them by a test",
        ["Stock.Columns"] = "docs/parts.md is held against them by a test",
        ["HouseTerms.Nothing"] = "a house of no walls, which the tests of the kernel's blocks build on",
        ["Outcome.Of(Figure)"] = "one figure by its object; each source's tests hold its own by it",
        ["HeadKind.None"] = "chosen by its place in the list of words",
        ["PointKey.Low"] = "half of a key; counts where keys are compared",
        ["ReleaseNumbers.BandK"] = "the band of the clicking reference; the season's thermostat is ideal at its middle",
        ["SearchProgress.Hypervolume"] = "what a search tells of itself; its tests and pins read it",
        ["SearchResult.DistinctPoints"] = "what a search tells of itself; its tests and pins read it",
        ["SearchResult.HypervolumeTrend"] = "what a search tells of itself; its tests and pins read it",
        ["SearchResult.Proof"] = "what a search tells of itself; its tests and pins read it",
        ["AimProof.IsComplete"] = "what a proof tells of itself; its tests read it",
        ["CheapestProof.IsComplete"] = "what a proof tells of itself; its tests read it",
        ["CheapestProver.Run(Double[], Double, IProgress, CancellationToken)"] = "the whole question at once; its tests and benchmarks ask so",
        ["PartInfo.Note"] = "a miss: no list or page shows a part's note yet",
        ["WinterWish.Name"] = "a miss: a winter's own name in the scenario is shown nowhere yet",
    };

    [Fact]
    public void Every_member_has_a_user_in_src()
    {
        var written = Reachable(BuiltCode.HandedTo(m => m.DeclaringType!.Namespace == "System.Text.Json" || m.Name == "WriteJson"));
        var idle = BuiltCode.Types.Where(t => !t.IsSubclassOf(typeof(Delegate)) && !t.IsEnum && !t.IsNestedPrivate)
            .SelectMany(t => Members(t).Where(m => !(m is PropertyInfo && written.Contains(t)) && !IsColumn(m) && !IsUsed(m)).Select(m => Told(t, m)))
            .Concat(IdleConstants()).Distinct().ToList();
        // An exception may name a whole type.
        idle = [.. idle.Select(i => Known.ContainsKey(i.Split('.')[0]) ? i.Split('.')[0] : i).Distinct()];
        var (more, less) = (idle.Except(Known.Keys).Order(StringComparer.Ordinal), Known.Keys.Except(idle));
        Assert.True(!more.Any(), "Without a user in src:\n" + string.Join('\n', more));
        Assert.True(!less.Any(), "No exception any more:\n" + string.Join('\n', less));
    }

    // A constant's name is gone from the built code, so it is looked for in the text; so is an enum's, unless it is read by its words.
    private static IEnumerable<string> IdleConstants()
    {
        var text = string.Join('\n', SourceRulesTests.Sources.Select(File.ReadAllText));
        var byName = BuiltCode.HandedTo(m => m.DeclaringType!.Name == "Words").ToHashSet();
        return BuiltCode.Types.Where(t => !byName.Contains(t))
            .SelectMany(t => t.GetFields(BuiltCode.Declared).Where(f => f.IsLiteral && !f.IsPrivate && !IsNamed(t, f.Name)).Select(f => $"{t.Name}.{f.Name}"));
        bool IsNamed(Type type, string name) =>
            type.IsEnum ? Regex.IsMatch(text, $@"\b{type.Name}\.{name}\b") : Regex.Count(text, $@"\b{name}\b") > 1;
    }

    // A part's columns have a rule of their own: ColumnsTests.
    private static bool IsColumn(MemberInfo member) => member is PropertyInfo { CanWrite: true } && member.DeclaringType!.IsAssignableTo(typeof(IPart));

    // What is public, and every formula that more than its own type may call.
    private static IEnumerable<MemberInfo> Members(Type type)
    {
        var promised = type.IsInterface ? [] : Promised(type);
        foreach (var member in type.GetMembers(BuiltCode.Declared).Where(m => !BuiltCode.IsMade(m)))
        {
            var method = member switch { PropertyInfo p => p.GetMethod ?? p.SetMethod, MethodBase m => m, _ => null };
            var seen = method is null ? member is FieldInfo { IsPublic: true, IsLiteral: false }
                : method.IsPublic || (method.IsStatic && method.IsAssembly && member is MethodInfo);
            var isEquality = member.Name is "op_Equality" or "op_Inequality";
            var asked = member is not MethodInfo { IsSpecialName: true } || (member.Name.StartsWith("op_", StringComparison.Ordinal) && !isEquality);
            var isOverride = method is MethodInfo own && own.GetBaseDefinition() != own;
            if (seen && asked && !isOverride && !(method is not null && promised.Contains(method)))
                yield return member;
        }
    }

    // What an interface asks for is used where the interface is.
    private static HashSet<MethodBase> Promised(Type type) =>
        [.. type.GetInterfaces().SelectMany(i => type.GetInterfaceMap(i).TargetMethods).Where(m => m is not null)];

    private static string Told(Type type, MemberInfo member)
    {
        static string Name(Type type) => type.Name.Split('`')[0];
        var with = member is MethodBase m ? $"({string.Join(", ", m.GetParameters().Select(p => Name(p.ParameterType)))})" : "";
        return $"{Name(type)}.{member.Name}{with}";
    }

    private static bool IsUsed(MemberInfo member) => member.IsDefined(typeof(JsonPropertyNameAttribute)) || member switch
    {
        PropertyInfo p => BuiltCode.UsersOf(p.GetMethod ?? p.SetMethod!).Any() || TakenApart(p),
        MethodInfo m when m == m.Module.Assembly.EntryPoint => true,
        ConstructorInfo c => BuiltCode.UsersOf(c).Any() || c.GetParameters().Length == 0 || c.DeclaringType!.IsAbstract,
        _ => BuiltCode.UsersOf(member).Any(),
    };

    // A positional record that is taken apart is read whole.
    private static bool TakenApart(PropertyInfo property) =>
        property.DeclaringType!.GetMethod("Deconstruct") is { } apart && BuiltCode.IsMade(apart) && BuiltCode.UsersOf(apart).Any();

    /// <summary>What a serializer goes on to write: the properties' types of what it is given.</summary>
    private static HashSet<Type> Reachable(IEnumerable<Type> roots)
    {
        var seen = new HashSet<Type>();
        var open = new Queue<Type>(roots);
        while (open.TryDequeue(out var type))
        {
            foreach (var part in type.IsArray ? [type.GetElementType()!] : type.GetGenericArguments())
                open.Enqueue(part);
            if (type.Namespace?.StartsWith("DesignSearch", StringComparison.Ordinal) != true || !seen.Add(type))
                continue;
            foreach (var property in type.GetProperties())
                open.Enqueue(property.PropertyType);
        }

        return seen;
    }
}
