using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Tests;

/// <summary>Anything spelt out as text, property by property, parts by their ids and figures to nine digits.</summary>
internal static class Spelt
{
    private const int Deepest = 12;
    private static readonly string[] LeftOut = ["Catalogue", "Offered", "Systems", "Files", "Stock"];

    /// <summary>The text of a value.</summary>
    public static string Of(object? value)
    {
        var text = new StringBuilder();
        Write(text, value, 0);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value, int depth)
    {
        switch (value)
        {
            case null:
                text.Append('-');
                break;
            case double number:
                text.Append((Math.Abs(number) < 1e-12 ? 0 : number).ToString("G9", CultureInfo.InvariantCulture));
                break;
            case string or Enum or decimal or bool or int or long or ulong or DateTime or TimeSpan:
                text.Append(Convert.ToString(value, CultureInfo.InvariantCulture));
                break;
            case IPart part:
                text.Append(part.Id);
                break;
            case Delegate or Type or DesignedSystem:
                break;
            case Choice choice:
                text.Append(choice.Key);
                break;
            case IEnumerable many:
                text.Append('[');
                foreach (var one in many)
                {
                    Write(text, one, depth + 1);
                    text.Append("; ");
                }

                text.Append(']');
                break;
            case var _ when depth > Deepest:
                throw new InvalidOperationException("What is spelt goes round: " + value.GetType());
            default:
                text.Append('{');
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => IsTold(p)).OrderBy(p => p.Name, StringComparer.Ordinal))
                {
                    text.Append(property.Name).Append('=');
                    Write(text, property.GetValue(value), depth + 1);
                    text.Append(' ');
                }

                text.Append('}');
                break;
        }
    }

    private static bool IsTold(PropertyInfo property) =>
        property.GetIndexParameters().Length == 0 && !property.PropertyType.IsByRefLike && !LeftOut.Contains(property.Name, StringComparer.Ordinal);
}
