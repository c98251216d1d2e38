using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>A choice of a part whose record is known: <c>layout.Get(choice)</c> is such a record or null.</summary>
/// <typeparam name="T">The record of the part.</typeparam>
/// <param name="key">Key in [choices] and in layout files.</param>
/// <param name="title">What it is, in plain words.</param>
/// <param name="kind">The kind of part.</param>
public sealed class PartChoice<T>(string key, string title, PartKind kind) : PartChoice(key, title, kind)
    where T : class, IPart;
