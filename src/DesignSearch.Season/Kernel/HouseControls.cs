namespace DesignSearch.Season;

/// <summary>What vents, release and heater may do within a step, and the heat that other parts give to the air.</summary>
internal struct HouseControls
{
    public double VentMaxWPerK, VentAboveC;

    /// <summary>Conductance of the release now, its fade applied [W/K], its source [°C], its electricity in full run [W].</summary>
    public double ReleaseWPerK, SourceC, ReleaseElectricW, ReleaseSetC;

    /// <summary>Share of full run that the tank's warmth allows [0…1].</summary>
    public double ReleaseFade;

    public double HeaterMaxW, HeaterSetC;

    /// <summary>Loss of the tank and electricity of the collector's pump [W].</summary>
    public double TankLossW, PumpElectricW;
}
