using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class StockTests
{
    private static readonly Catalogue Barrels = Catalogue.Of([Sample.Part("barrel-a", 22m, PartUnit.Piece), Sample.Part("pipe-a", 2m, PartUnit.Metre)]);

    [Fact]
    public void Stock_is_read()
    {
        var (stock, faults) = Load("# what I own\nid,quantity\npipe-a,12.5\nbarrel-a,2\n", Barrels);
        Assert.Empty(faults);
        Assert.Equal(["barrel-a", "pipe-a"], stock.Ids);
        Assert.Equal((12.5m, 2m, 0m), (stock.QuantityOf("pipe-a"), stock.QuantityOf("barrel-a"), stock.QuantityOf("tank-a")));
    }

    [Fact]
    public void Faults_are_found_at_once()
    {
        var (_, faults) = Load("id,quantity\npipe-b,1\nbarrel-a,-2\npipe-a,1\npipe-a,2\n", Barrels);
        Assert.Equal([2, 3, 5], faults.Select(f => f.Line).Order());
        Assert.Contains(faults, f => f.Expected.Contains("did you mean 'pipe-a'?", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.Expected.Contains("stands here twice", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.Value == "-2" && f.Column == 10);
    }

    [Fact]
    public void An_id_at_fault_is_placed_wherever_its_column_stands()
    {
        var (_, faults) = Load("quantity,id\n1,pipe-b\n10,pipe-a\n20,pipe-a\n", Barrels);
        Assert.Equal([(2, 3, "pipe-b"), (4, 4, "pipe-a")], faults.Select(f => (f.Line, f.Column, f.Value)));
    }

    [Fact]
    public void Any_id_is_taken_without_a_catalogue()
    {
        var (stock, faults) = Load("id,quantity\nmystery,1\n", null);
        Assert.Empty(faults);
        Assert.Equal(1m, stock.QuantityOf("mystery"));
    }

    [Fact]
    public void Empty_stock_owns_nothing() => Assert.Equal(0m, Stock.Empty.QuantityOf("pipe-a"));

    private static (Stock Stock, IReadOnlyList<InputFault> Faults) Load(string text, Catalogue? catalogue)
    {
        var faults = new FaultList();
        var stock = Sample.InFolder(folder => Stock.Load(Path.Combine(folder, "stock.csv"), catalogue, faults), ("stock.csv", text));
        return (stock, faults.Faults);
    }
}
