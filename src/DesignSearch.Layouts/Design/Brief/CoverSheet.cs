namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What a face of the house is covered with.</summary>
/// <param name="UWPerM2K">Catalogue U-value, standard films included [W/(m²K)].</param>
/// <param name="Light">Light it lets through at normal incidence, dirt and bars allowed for [0…1].</param>
/// <param name="Layers">Sheets or skins.</param>
public sealed record CoverSheet(double UWPerM2K, double Light, int Layers);
