using System.Text;
using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Skin;

namespace DesignSearch.Parts.Tests;

/// <summary>Small inputs for tests.</summary>
internal static class Sample
{
    public const string BarrelHeader = "id,name,unit,price,price_low,price_high,price_second_hand,life_years,labour_hours,volume_l,diameter_m,height_m,empty_kg,note";
    public const string BarrelRow = "barrel-a,Barrel A,piece,22.00,12.00,40.00,,10,0.5,200,0.58,0.93,9,Stands in the sun.";

    public static IPart Part(string id, decimal price, PartUnit unit) => new Sealing(new PartInfo
    {
        Id = id,
        Name = "Part " + id,
        Unit = unit,
        Price = price,
        PriceLow = price,
        PriceHigh = price,
        LifeYears = 10,
        LabourHours = 1,
        Note = "For tests.",
    })
    {
        LeakageFactor = 1,
        FloorUpToM2 = 1,
    };

    public static IReadOnlyList<InputFault> FaultsOf(string file, string text) => FaultsOf((file, text));

    public static IReadOnlyList<InputFault> FaultsOf(params (string File, string Text)[] files)
    {
        var faults = new FaultList();
        InFolder(folder => Catalogue.Load([folder], Kinds.All, faults), files);
        return faults.Faults;
    }

    public static T InFolder<T>(Func<string, T> use, params (string File, string Text)[] files) => InFolder(use, [.. files.Select(f => (f.File, Encoding.UTF8.GetBytes(f.Text)))]);

    public static T InFolder<T>(Func<string, T> use, params (string File, byte[] Content)[] files)
    {
        var folder = Directory.CreateTempSubdirectory("designsearch-parts-").FullName;
        try
        {
            foreach (var (file, content) in files)
                File.WriteAllBytes(Path.Combine(folder, file), content);
            return use(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
