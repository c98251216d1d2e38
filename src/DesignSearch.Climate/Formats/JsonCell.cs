namespace DesignSearch.Climate.Formats;

/// <summary>One value of a JSON file: where its text stands among the bytes; length −1 where there is none.</summary>
internal readonly record struct JsonCell(int Start, int Length)
{
    public static readonly JsonCell None = new(0, -1);
}
