namespace DesignSearch.Layouts.Tests;

/// <summary>Houses of other shapes as a scenario has them, in the place of the sample's own sizes.</summary>
internal static class WrittenHouses
{
    public const string Sizes =
        "length_m = 5.0\nwidth_m = 3.0\neaves_m = 1.9\nridge_m = 2.7\nridge_azimuth_deg = 90         # the ridge runs east and west\n";

    public const string LeanTo = """
        shape = "lean-to"
        length_m = 5
        width_m = 3
        eaves_m = 1.8
        ridge_m = 2.6
        back_wall_azimuth_deg = 0
        behind_back_wall = "heated room"
        back_wall_u_w_per_m2k = 2.1
        back_wall_capacity_kj_per_m2k = 390
        back_wall_top_m = 6

        """;

    public const string Tunnel = """
        shape = "tunnel"
        length_m = 6
        width_m = 3
        ridge_m = 1.5

        """;

    public const string OnBrick = """
        length_m = 5
        width_m = 3
        eaves_m = 1.9
        ridge_m = 2.7
        base_wall_m = 0.5
        base_wall_u_w_per_m2k = 2.1
        base_wall_capacity_kj_per_m2k = 390
        side_cover_u_w_per_m2k = 5.75
        side_cover_light = 0.8
        side_cover_layers = 1
        end_cover_u_w_per_m2k = 2.4

        """;

    public const string Sunken = """
        shape = "lean-to"
        length_m = 8
        width_m = 2.5
        eaves_m = 1.6
        ridge_m = 2.4
        back_wall_azimuth_deg = 0
        behind_back_wall = "outside"
        back_wall_u_w_per_m2k = 1.8
        back_wall_capacity_kj_per_m2k = 40
        back_wall_top_m = 2.4
        base_wall_m = 0.8
        base_wall_u_w_per_m2k = 2.1
        base_wall_capacity_kj_per_m2k = 390
        floor_below_m = 0.6

        """;

    public const string FlatHoop = """
        shape = "tunnel"
        length_m = 7
        width_m = 4
        eaves_m = 0.9
        ridge_m = 2.3

        """;
}
