namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>Draws the scheme of a layout.</summary>
public static class SchemeDrawing
{
    /// <summary>Every system draws its own; only when a layout is shown, for a search has no use for it.</summary>
    /// <param name="built">The layout worked out.</param>
    public static Scheme Of(BuiltLayout built)
    {
        ArgumentNullException.ThrowIfNull(built);
        var sketch = new SchemeSketch(built.Parts);
        foreach (var system in built.Systems)
            system.Draw(sketch);
        return sketch.Scheme;
    }
}
