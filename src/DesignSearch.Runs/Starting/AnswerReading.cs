using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Runs.Starting;

/// <summary>Reads what people type: numbers with a point or a comma, two of them with whatever between.</summary>
internal static class AnswerReading
{
    private static readonly char[] Between = ['x', '×', ';', ' ', '\t', '/'];

    /// <summary>Several numbers, each in a range; null where they are none.</summary>
    /// <param name="answer">What was typed.</param>
    /// <param name="ranges">Least and most of each.</param>
    public static double[]? Numbers(string answer, params (double Least, double Most)[] ranges)
    {
        var words = answer.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(w => w.Any(char.IsAsciiDigit)).ToArray();
        if (words.Length != ranges.Length)
            return null;
        var numbers = new double[words.Length];
        for (var i = 0; i < words.Length; i++)
        {
            if (NumberHint.Meant(words[i].TrimEnd(',')) is not ({ } number, _) || !PlainNumber.TryRead(number, out numbers[i])
                || numbers[i] < ranges[i].Least || numbers[i] > ranges[i].Most)
                return null;
        }

        return numbers;
    }

    /// <summary>Latitude and longitude; null where they are none.</summary>
    public static double[]? Place(string answer)
    {
        var parts = answer.Split(',');
        // 57.1,9.9 has one comma between; 57,1 9,9 has blanks.
        var spaced = parts.Length == 2 && !answer.Trim().Contains(' ', StringComparison.Ordinal) ? parts[0] + " " + parts[1] : answer;
        return Numbers(spaced.Replace("°", "", StringComparison.Ordinal), (-66, 66), (-180, 180));
    }

    /// <summary>One of some words, by its beginning; null where none or several fit.</summary>
    public static string? Word(string answer, params string[] words)
    {
        var fits = words.Where(w => w.StartsWith(answer.Trim(), StringComparison.OrdinalIgnoreCase)).ToList();
        return words.FirstOrDefault(w => w.Equals(answer.Trim(), StringComparison.OrdinalIgnoreCase)) ?? (fits.Count == 1 ? fits[0] : null);
    }

    /// <summary>Numbers as they are typed.</summary>
    public static string Typed(string between, params double[] numbers) =>
        string.Join(between, numbers.Select(n => n.ToString("0.####", CultureInfo.InvariantCulture)));
}
