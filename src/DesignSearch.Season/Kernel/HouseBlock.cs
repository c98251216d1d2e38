namespace DesignSearch.Season;

/// <summary>Air, cover, floor, two layers of soil and barrels: one implicit step, air eliminated last. Equations in docs/model.md, "House".</summary>
/// <remarks>Everything that does not change within an hour is folded into conductances by <see cref="Hour"/>; <see cref="Step"/> allocates nothing.</remarks>
internal struct HouseBlock
{
    /// <summary>Depth at which the ground is taken as undisturbed [m].</summary>
    public const double GroundDepthM = 1.6;

    private const double TopLayerM = 0.08;
    private const double MiddleLayerM = 0.3;
    private const double DeepLayerM = 0.8;
    private const double StefanBoltzmann = 5.670374419e-8;
    private const double Kelvin = 273.15;
    private const double AirJPerM3K = HouseLoss.AirWhPerM3K * 3600;

    public double Air, Cover, Floor, Soil, Deep, Barrels;

    // Flows of the last step [W] and what the step decided.
    public double CoverToAir, CoverToSky, Leakage, Vents, Ground, ReleaseW, HeaterW;

    private readonly HouseNumbers house;
    private readonly double step, coverArea, airStore, coverStore, floorStore, soilStore, deepStore, barrelStore;
    private readonly double floorToSoil, soilToDeep, deepToGround, edge, floorToAir, barrelsToAir, insideFilm, insideRadiation;
    private readonly double outsideStill, outsidePerWind, emissivity, windFactor, kept, onFloor, barrelSun, volumeFactor;
    private readonly bool hasBarrels;

    private double coverToAirG, floorToCoverG, outerG, outerTotal, convective, sky, outsideEquivalent, outsideSurface, leak, outside, skyC, groundC, sunAir, sunFloor, sunBarrels;
    private double pc, pd, ps, pw, pf, floorAir;

    public HouseBlock(Installation installation, SeasonAssumptions a, double stepSeconds, double startC, double groundStartC)
    {
        house = installation.House;
        step = stepSeconds;
        coverArea = house.CoverAreaM2;
        var floor = house.FloorAreaM2;
        var (conductivity, capacity) = (a.Value("soil_conductivity_w_per_mk"), a.Value("soil_capacity_j_per_m3k"));
        insideFilm = a.Value("inside_convection_w_per_m2k");
        insideRadiation = a.Value("inside_radiation_w_per_m2k");
        outsideStill = a.Value("outside_convection_w_per_m2k");
        outsidePerWind = a.Value("outside_convection_per_wind_j_per_m3k");
        emissivity = a.Value("outside_emissivity");
        windFactor = a.Value("roof_wind_factor");
        kept = a.Value("sun_kept_share") * house.LiningTransmittance;
        volumeFactor = a.Value("air_changes_volume_factor");
        airStore = (AirJPerM3K * house.VolumeM3 + a.Value("air_and_bench_capacity_j_per_m2k") * floor) / step;
        coverStore = house.CoverCapacityJPerM2K * coverArea / step;
        floorStore = capacity * TopLayerM * floor / step;
        soilStore = capacity * MiddleLayerM * floor / step;
        deepStore = capacity * DeepLayerM * floor / step;
        floorToSoil = conductivity * floor / ((TopLayerM + MiddleLayerM) / 2);
        soilToDeep = conductivity * floor / ((MiddleLayerM + DeepLayerM) / 2);
        deepToGround = conductivity * floor / (GroundDepthM - TopLayerM - MiddleLayerM - DeepLayerM / 2);
        edge = house.EdgeLossWPerMK * house.PerimeterM;
        floorToAir = insideFilm * floor;
        var barrels = installation.Barrels;
        hasBarrels = barrels.WaterKg > 0;
        barrelStore = hasBarrels ? barrels.WaterKg * 4186 / step : 1;
        barrelsToAir = hasBarrels ? barrels.SurfaceM2 * a.Value("barrel_film_w_per_m2k") : 0;
        barrelSun = hasBarrels ? barrels.SunShare : 0;
        onFloor = a.Value("sun_on_floor_share");
        Air = Cover = Floor = Barrels = startC;
        outsideSurface = startC;
        Soil = Deep = groundStartC;
    }

    /// <summary>Sun that stays in the house as heat this hour [W].</summary>
    public readonly double SunW => sunAir + sunFloor + sunBarrels;

    /// <summary>Heat in all stores against 0 °C [J].</summary>
    public readonly double StoredJ => step * (airStore * Air + coverStore * Cover + floorStore * Floor + soilStore * Soil + deepStore * Deep + (hasBarrels ? barrelStore * Barrels : 0));

    /// <summary>Folds one hour's weather into conductances and sources.</summary>
    public void Hour(double outsideC, double hourSkyC, double windMPerS, double sunW, double hourGroundC, bool coverClosed)
    {
        (outside, skyC, groundC) = (outsideC, hourSkyC, hourGroundC);
        var wind = windMPerS * windFactor;
        // What lies between the house and the cover's inner surface takes its share of both films.
        var added = house.LiningResistanceM2KPerW + (coverClosed ? house.NightCoverResistanceM2KPerW : 0);
        var passed = 1 / (1 + added * (insideFilm + insideRadiation));
        coverToAirG = insideFilm * coverArea * passed;
        floorToCoverG = insideRadiation * house.FloorAreaM2 * passed;
        leak = AirJPerM3K * house.VolumeM3 / 3600 * volumeFactor * (house.AirChangesPerHour + house.AirChangesPerHourPerMPerS * wind);
        convective = outsideStill + outsidePerWind * wind;
        var heat = sunW * kept;
        sunBarrels = heat * barrelSun;
        sunFloor = (heat - sunBarrels) * onFloor;
        sunAir = heat - sunBarrels - sunFloor;
    }

    /// <summary>One step. The release gives at most its conductance times what the tank's top is warmer; the heater adds the rest within its power.</summary>
    public void Step(in ReleaseNumbers release, double releaseG, double tankTopC, double tankLossW, double fanW, in HeaterNumbers heater)
    {
        Couple();
        var rc = coverStore * Cover + outerG * outsideEquivalent;
        var rd = deepStore * Deep + deepToGround * groundC;
        var rs = soilStore * Soil + soilToDeep * rd / pd;
        var rw = barrelStore * Barrels + sunBarrels;
        var rf = floorStore * Floor + edge * outside + sunFloor + floorToCoverG * rc / pc + floorToSoil * rs / ps;
        var p = airStore + coverToAirG + floorToAir + barrelsToAir + leak - coverToAirG * coverToAirG / pc - barrelsToAir * barrelsToAir / pw - floorAir * floorAir / pf;
        var r = airStore * Air + leak * outside + sunAir + tankLossW + fanW + coverToAirG * rc / pc + barrelsToAir * rw / pw + floorAir * rf / pf;

        // Vents: as much as brings the air back to their set point, as far as they open.
        var vent = r > house.VentAboveC * p && outside < house.VentAboveC ? Math.Min(house.VentWPerK, (r - house.VentAboveC * p) / (house.VentAboveC - outside)) : 0;
        p += vent;
        r += vent * outside;

        // Release: what the set point needs, within what the tank's top can give; it never cools.
        ReleaseW = 0;
        var need = release.SetPointC * p - r;
        if (releaseG > 0 && need > 0 && tankTopC > r / p)
        {
            if (need <= releaseG * (tankTopC - release.SetPointC))
            {
                ReleaseW = need;
                r += need;
            }
            else
            {
                var air = (r + releaseG * tankTopC) / (p + releaseG);
                ReleaseW = releaseG * (tankTopC - air);
                r += ReleaseW;
            }
        }

        HeaterW = Math.Min(heater.PowerW, Math.Max(0, heater.SetPointC * p - r));
        var a = (r + HeaterW) / p;
        var f = (rf + floorAir * a) / pf;
        var c = (rc + floorToCoverG * f + coverToAirG * a) / pc;
        var s = (rs + floorToSoil * f) / ps;
        var d = (rd + soilToDeep * s) / pd;

        var through = outerG * (c - outsideEquivalent);
        outsideSurface = outsideEquivalent + through / (coverArea * outerTotal);
        CoverToSky = coverArea * sky * (outsideSurface - skyC);
        CoverToAir = through - CoverToSky;
        Leakage = leak * (a - outside);
        Vents = vent * (a - outside);
        Ground = deepToGround * (d - groundC) + edge * (f - outside);
        Barrels = (rw + barrelsToAir * a) / pw;
        (Air, Floor, Cover, Soil, Deep) = (a, f, c, s, d);
    }

    // Long-wave with the exact secant at the old surface temperature, so that the balance closes; then the pivots of the elimination.
    private void Couple()
    {
        var (surface, heaven, around) = (outsideSurface + Kelvin, skyC + Kelvin, outside + Kelvin);
        sky = emissivity * StefanBoltzmann * house.SkyViewFactor * (surface * surface + heaven * heaven) * (surface + heaven);
        var rest = emissivity * StefanBoltzmann * (1 - house.SkyViewFactor) * (surface * surface + around * around) * (surface + around);
        outerTotal = convective + rest + sky;
        outsideEquivalent = ((convective + rest) * outside + sky * skyC) / outerTotal;
        outerG = coverArea / (house.CoverResistanceM2KPerW + 1 / outerTotal);
        pc = coverStore + floorToCoverG + coverToAirG + outerG;
        pd = deepStore + soilToDeep + deepToGround;
        ps = soilStore + floorToSoil + soilToDeep - soilToDeep * soilToDeep / pd;
        pw = barrelStore + barrelsToAir;
        pf = floorStore + floorToCoverG + floorToSoil + floorToAir + edge - floorToCoverG * floorToCoverG / pc - floorToSoil * floorToSoil / ps;
        floorAir = floorToAir + floorToCoverG * coverToAirG / pc;
    }
}
