namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>How the components of a compost heap are called in its pictures.</summary>
internal static class HeapSchemeWords
{
    public const string Heap = "compost heap";
    public const string Coil = "coil in the heap and pipe in the house";
    public const string Header = "header tank of the heap";
    public const string Vent = "air vent of the heap";
    public const string Cocks = "fill and drain cocks of the heap";
    public const string Strainer = "strainer of the heap";
    public const string Thermostat = "thermostat for the heap's heat";
    public const string CoreThermostat = "thermostat of the heap's core";
    public const string CoreSensor = "sensor in the heap's core";
}
