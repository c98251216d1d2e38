namespace DesignSearch.Fitting.Model;

/// <summary>One set of the figures that a fit seeks.</summary>
/// <param name="Loss">The whole loss of cover, leaks and edge, as a factor on the drawing's.</param>
/// <param name="StoreJPerM2K">Heat that pots, beds and frame store, per floor [J/(m²K)].</param>
/// <param name="CouplingWPerM2K">What goes between them and the air, per floor [W/(m²K)].</param>
/// <param name="Sun">Sun that stays in the house, as a factor on the drawing's.</param>
public readonly record struct FitPoint(double Loss, double StoreJPerM2K, double CouplingWPerM2K, double Sun);
