using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What is harder than planned for, in words.</summary>
internal static class WhatIfWords
{
    public static string AsDesigned(string winter) => $"the {winter} winter as it is";

    public static string Colder(double lowestC) => Written.Sentence($"its cold week goes down to {lowestC:0} °C");

    public const string CoverLeftOpen = "the night cover stays open in its coldest night";

    public static string SnowLeft(int days) => Written.Sentence($"snow of its {Written.Count(days, "dull, damp, cold day")} is left lying");

    public static string PowerCut(int hours) => Written.Sentence($"the mains fail for {hours} hours in its coldest night");
}
