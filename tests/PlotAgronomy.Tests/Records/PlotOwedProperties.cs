using FsCheck;
using FsCheck.Xunit;
using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

/// <summary>Laws of what is owed.</summary>
public class PlotOwedProperties
{
    private static readonly DateOnly Day = Books.Day(2025, 3, 1);
    private static readonly LimingMaterial Limestone = LimingMaterial.FromBasis(LimeBasis.GroundLimestone);
    private static readonly FertilizerProduct Grade = FertilizerProduct.Create("10-20-5", FertilizerAnalysis.FromGrade("10-20-5"));

    [Property(MaxTest = 50)]
    public bool One_entry_of_many_loads_is_owed_like_as_many_entries_in_any_order(NonEmptyArray<PositiveInt> pounds)
    {
        SpreadLoad[] loads = [.. pounds.Get.Take(8).Select(p => SpreadLoad.FromWeight(Mass.FromPounds(1 + (p.Get % 300))))];
        var together = PlotBook.Empty.With("a", Need(), Lime([.. loads]), Spread([.. loads]));
        var apart = PlotBook.Empty.With("a", [.. loads.AsEnumerable().Reverse().SelectMany(l => new BookEntry[] { Lime(l), Spread(l) }), Need()]);
        var (one, many) = (Owed(together), Owed(apart));
        return Near.Equal(one.Lime.Value.StillOwed.Pounds + 1, many.Lime.Value.StillOwed.Pounds + 1, 1e-9)
            && one.Nutrients.Zip(many.Nutrients).All(n => Near.Equal(n.First.Delivered.PoundsPerAcre, n.Second.Delivered.PoundsPerAcre, 1e-9));
    }

    [Property(MaxTest = 50)]
    public bool What_is_put_down_missing_and_over_adds_up(PositiveInt pounds, PositiveInt need)
    {
        var book = PlotBook.Empty.With("a", Need(need.Get % 200), Spread(SpreadLoad.FromWeight(Mass.FromPounds(1 + (pounds.Get % 900)))));
        return Owed(book).Nutrients.All(n =>
            Near.Equal(n.AtLeast.PoundsPerAcre + n.Surplus.PoundsPerAcre, n.Delivered.PoundsPerAcre + n.Missing.PoundsPerAcre, 1e-9)
            && Math.Min(n.Missing.PoundsPerAcre, n.Surplus.PoundsPerAcre) == 0);
    }

    private static PlotOwed Owed(PlotBook book) => PlotOwed.Of(book, Books.North, Area.FromAcres(0.7), Day.AddDays(9));

    private static NeedEntry Need(double phosphate = 50) => new()
    {
        On = Day,
        Plot = Books.North,
        Lime = LimeRate.FromBasis(ApplicationRate.FromPoundsPerAcre(900), 6.5, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina),
        Phosphate = ApplicationRate.FromPoundsPerAcre(phosphate),
    };

    private static LimeEntry Lime(params SpreadLoad[] loads) => new() { On = Day.AddDays(2), Plot = Books.North, Material = Limestone, Loads = [.. loads] };

    private static FertilizerEntry Spread(params SpreadLoad[] loads) => new() { On = Day.AddDays(3), Plot = Books.North, Product = Grade, Loads = [.. loads] };
}
