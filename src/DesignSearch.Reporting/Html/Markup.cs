using System.Xml.Linq;

namespace DesignSearch.Reporting.Html;

/// <summary>
/// A finished piece of HTML or SVG. Only <see cref="Of(MarkupTemplate)"/> makes it from text, and that writes every hole of its
/// template as text.
/// </summary>
/// <param name="Text">The markup.</param>
internal sealed record Markup(string Text)
{
    /// <summary>No markup at all.</summary>
    public static readonly Markup None = new("");

    /// <summary>Markup from a template: literal parts stand as they are, text in holes is escaped, markup in holes is kept.</summary>
    public static Markup Of(MarkupTemplate template) => new(template.Finish());

    /// <summary>Markup of an element, whose texts and attributes are escaped where it is written.</summary>
    public static Markup Of(XElement element) => new(element.ToString(SaveOptions.DisableFormatting));

    /// <summary>Pieces one after another.</summary>
    public static Markup All(IEnumerable<Markup> pieces) => new(string.Concat(pieces.Select(p => p.Text)));

    /// <summary>The markup where a condition holds, else nothing.</summary>
    public static Markup When(bool condition, Func<Markup> markup) => condition ? markup() : None;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
