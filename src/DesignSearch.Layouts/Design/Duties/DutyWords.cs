using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Duties;

/// <summary>What the checks of ratings found, in words.</summary>
internal static class DutyWords
{
    public static FormattableString Found(NeededPart needed, Duty duty)
    {
        var (name, system) = (needed.Part.Name, needed.Purpose.System);
        if (duty.Rating == Rating.IpCode)
        {
            FormattableString has = needed.Part.Bears(duty.Rating) is { } code
                ? (FormattableString)$"has IP{code:00}"
                : $"has none in the catalogue";
            return $"{name} ({system}) wants IP{duty.Value:00} where it stands and {has}.";
        }

        var unit = Unit(duty.Rating);
        return needed.Part.Bears(duty.Rating) is { } bears
            ? (FormattableString)$"{name} ({system}) meets {duty.Value:0.##} {unit} and bears {bears:0.##} {unit}."
            : $"{name} ({system}) meets {duty.Value:0.##} {unit}; its row in the catalogue does not say what it bears.";
    }

    private static string Unit(Rating rating) => rating switch
    {
        Rating.TemperatureC => "°C",
        Rating.TorqueNm => "N·m",
        Rating.CurrentA => "A",
        Rating.VoltageV => "V",
        Rating.PressureBar => "bar",
        Rating.BreakingA => "A",
        Rating.ForceN => "N",
        _ => throw new ArgumentOutOfRangeException(nameof(rating)),
    };
}
