namespace DesignSearch.Search;
internal static class Tuning
{
    static double G(string n, double d) => Environment.GetEnvironmentVariable("T_" + n) is { } s ? double.Parse(s, System.Globalization.CultureInfo.InvariantCulture) : d;
    public static readonly double Optimism = G("OPT", 0.5), Pool = G("POOL", 64), Steps = G("STEPS", 30), Share = G("SHARE", 0.75), PoolN = G("POOLN", 0.5), Ridge = G("RIDGE", 0.1), PairW = G("PAIRW", 2);
}
