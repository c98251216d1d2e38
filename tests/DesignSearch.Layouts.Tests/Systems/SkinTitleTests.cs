using DesignSearch.Layouts.Systems.Skin;
using DesignSearch.Parts.Skin;
using Xunit;
using BuiltSkin = DesignSearch.Layouts.Systems.Skin.Skin;

namespace DesignSearch.Layouts.Tests;

/// <summary>What a layout is called after the skin that it has: every piece by its own word, and nothing for what it has not.</summary>
public sealed class SkinTitleTests
{
    [Fact]
    public void Each_piece_has_its_word()
    {
        using var small = new SmallScenario();
        var parts = small.Read().Catalogue;
        var whole = new BuiltSkin(
            parts.Of<NightCover>()[0], parts.Of<Lining>()[0], parts.Of<Sealing>()[0], parts.Of<PerimeterBoard>()[0], parts.Of<WindBreak>()[0]);
        Assert.Equal(["night cover", "lining", "seals", "edge board", "wind break"], SkinWords.Title(whole));
        Assert.Equal(["night cover"], SkinWords.Title(whole with { Lining = null, Sealing = null, PerimeterBoard = null, WindBreak = null }));
        Assert.Equal(["edge board", "wind break"], SkinWords.Title(whole with { NightCover = null, Lining = null, Sealing = null }));
        Assert.Empty(SkinWords.Title(new BuiltSkin(null, null, null, null, null)));
    }
}
