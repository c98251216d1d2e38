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
    public static IReadOnlyList<Pane> Of(Greenhouse house, HorizonProfile? site)
    {
        var (panes, isHoop) = (new List<Pane>(), house.Shape == HouseShape.Tunnel);
        foreach (var face in house.Geometry.Faces)
        {
            var sheet = house.SheetOf(face.Kind);
            foreach (var facet in face.Facets)
            {
                var horizon = SkyShade.Horizon(facet, house.Geometry, house.BackWall, house.Horizon, site);
                // A door stands in the first end.
                var door = face.Kind == FaceKind.End ? house.Door : HouseDoor.None;
                panes.Add(new(facet with { AreaM2 = facet.AreaM2 - door.AreaM2 }, new Glazing(sheet.Layers, sheet.Light), horizon) { HoldsSnow = isHoop });
                if (door is { AreaM2: > 0, Light: > 0 })
                    panes.Add(new(facet with { AreaM2 = door.AreaM2 }, new Glazing(sheet.Layers, door.Light), horizon));
            }
        }

        return panes;
    }
}
