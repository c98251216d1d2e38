using DesignSearch.Climate.Sun;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.Glass;

namespace DesignSearch.Layouts.Assess;

/// <summary>The cover of a house as the sun meets it.</summary>
internal static class HousePanes
{
    /// <summary>The pieces of its faces, each with its sheet and with what hides the sky from it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="site">Hills and trees about it; null where the land is flat.</param>
    public static IReadOnlyList<Pane> Of(Greenhouse house, HorizonProfile? site) =>
    [
        .. from face in house.Geometry.Faces
           let sheet = house.SheetOf(face.Kind)
           from facet in face.Facets
           select new Pane(facet, new Glazing(sheet.Layers, sheet.Light), SkyShade.Horizon(facet, house.Geometry, house.BackWall, house.Horizon, site)),
    ];
}
