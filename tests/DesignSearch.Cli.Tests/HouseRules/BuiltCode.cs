using System.Reflection;
using System.Reflection.Emit;
using System.Runtime.CompilerServices;

namespace DesignSearch.Cli.Tests;

/// <summary>What the built assemblies of src use: every method and field that some method's instructions name, with who names it.</summary>
internal static class BuiltCode
{
    /// <summary>What a type itself declares.</summary>
    public const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly OpCode?[] OneByte = Codes(1);

    private static readonly OpCode?[] TwoBytes = Codes(2);

    private static readonly Lazy<ILookup<MemberInfo, MethodBase>> Users =
        new(() => Read().ToLookup(use => Written(use.Named), use => use.By));

    /// <summary>The assemblies of src.</summary>
    public static IReadOnlyList<Assembly> Assemblies { get; } =
        [.. FloorsTests.Names.Select(floor => Assembly.Load(floor == "Cli" ? "designsearch" : "DesignSearch." + floor))];

    /// <summary>Every type of src that a person wrote.</summary>
    public static IEnumerable<Type> Types => Assemblies.SelectMany(a => a.GetTypes())
        .Where(t => !IsMade(t) && t.Namespace?.StartsWith("DesignSearch", StringComparison.Ordinal) == true);

    /// <summary>Methods of src that use a member, itself left out.</summary>
    public static IEnumerable<MethodBase> UsersOf(MemberInfo member) => Users.Value[member].Where(user => user != member);

    /// <summary>Types that src hands to a method of a type as type arguments, as a serializer is told what to write.</summary>
    public static IEnumerable<Type> HandedTo(Func<MethodBase, bool> method) =>
        Read().Select(use => use.Named).OfType<MethodInfo>().Where(m => m.IsGenericMethod && method(m)).SelectMany(m => m.GetGenericArguments());

    /// <summary>The type that a person wrote round a lambda, an iterator or a local function.</summary>
    public static Type Outer(Type type)
    {
        while (IsMade(type) && type.DeclaringType is { } outer)
            type = outer;
        return type;
    }

    /// <summary>True for what the compiler adds: closures, iterators, a record's printing.</summary>
    public static bool IsMade(MemberInfo member) => member.IsDefined(typeof(CompilerGeneratedAttribute), false);

    private static IEnumerable<(MemberInfo Named, MethodBase By)> Read()
    {
        foreach (var type in Assemblies.SelectMany(a => a.GetTypes()))
        {
            foreach (var method in type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared)))
            {
                // What a record says, compares and copies by itself is no use of its members; the body of a lambda or a local function is.
                if ((IsMade(method) && !method.Name.StartsWith('<')) || method.GetMethodBody() is not { } body)
                    continue;
                foreach (var named in Named(method, body.GetILAsByteArray()!))
                    yield return (named, method);
            }
        }
    }

    private static IEnumerable<MemberInfo> Named(MethodBase method, byte[] il)
    {
        var typeArguments = method.DeclaringType!.IsGenericType ? method.DeclaringType.GetGenericArguments() : null;
        var methodArguments = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (var at = 0; at < il.Length;)
        {
            var code = (il[at] == 0xFE ? TwoBytes[il[at + 1]] : OneByte[il[at]])!.Value;
            at += code.Size;
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineTok
                && code != OpCodes.Stfld && code != OpCodes.Stsfld
                && method.Module.ResolveMember(BitConverter.ToInt32(il, at), typeArguments, methodArguments) is { } named
                && named is MethodBase or FieldInfo)
                yield return named;
            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(il, at),
                _ => 4,
            };
        }
    }

    // The member as it stands in its file, without the types that a call fills in; an array's own methods stand in none.
    private static MemberInfo Written(MemberInfo member) =>
        member.DeclaringType is { IsArray: true } ? member : member.Module.ResolveMember(member.MetadataToken)!;

    private static OpCode?[] Codes(int size)
    {
        var codes = new OpCode?[256];
        foreach (var field in typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static))
        {
            if (field.GetValue(null) is OpCode code && code.Size == size)
                codes[code.Value & 0xFF] = code;
        }

        return codes;
    }
}
