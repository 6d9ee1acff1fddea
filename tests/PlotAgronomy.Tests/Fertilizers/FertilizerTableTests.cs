using PlotAgronomy.Fertilizers;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>Integrity of the room's tables: form, not truth.</summary>
public class FertilizerTableTests
{
    [Theory]
    [InlineData("Fertilizers/Data/materials.csv", 40), InlineData("Fertilizers/Data/grades.csv", 22), InlineData("Fertilizers/Data/compatibility.csv", 35)]
    [InlineData("Fertilizers/Data/manures.csv", 20), InlineData("Fertilizers/Data/manure-availability.csv", 19), InlineData("Fertilizers/Data/seed-placed-limits.csv", 27)]
    [InlineData("Fertilizers/Data/urea-loss.csv", 13), InlineData("Fertilizers/Data/setbacks.csv", 9), InlineData("Fertilizers/Data/constants.csv", 20), InlineData("Fertilizers/Data/published-factors.csv", 36)]
    public void The_table_has_all_its_rows(string name, int rows) => Assert.Equal(rows, CsvTable.Embedded(name).Rows.Length);

    [Fact]
    public void Every_manure_and_availability_is_readable()
    {
        Assert.All(Manure.All, m => Assert.True(m.Nitrogen.Low > 0 && m.Phosphate.Low > 0 && m.Potash.Low > 0));
        Assert.All(ManureAvailability.All, a => Assert.Same(a, ManureAvailability.Find(a.Id)));
        Assert.All(Manure.All, m => Assert.Same(m, Manure.Find(m.Id)));
    }

    [Fact]
    public void No_pair_of_materials_has_two_rules() =>
        Assert.Equal(MixCompatibility.All.Length, MixCompatibility.All.Select(r => (r.First < r.Second ? (r.First, r.Second) : (r.Second, r.First))).Distinct().Count());

    [Fact]
    public void Seed_row_limits_never_rise_with_the_row_spacing()
    {
        var rows = SeedPlacedLimit.All.Where(l => l.RowSpacingLow is not null).ToList();
        Assert.All(rows, a => Assert.All(rows.Where(b => b.Crop == a.Crop && b.Soil == a.Soil && b.RowSpacingLow!.Value.Inches > a.RowSpacingLow!.Value.Inches),
            b => Assert.True(b.Limit <= a.Limit)));
    }

    /// <summary>The pounds in a 50 lb bag that the trade prints for its common grades (common practice).</summary>
    [Theory]
    [InlineData("6-24-24", 3, 12, 12), InlineData("9-23-30", 4.5, 11.5, 15), InlineData("5-10-15", 2.5, 5, 7.5), InlineData("16-20-0-15S", 8, 10, 0), InlineData("11-52-0", 5.5, 26, 0)]
    public void A_bag_holds_what_the_trade_prints(string grade, double nitrogen, double phosphate, double potash)
    {
        var analysis = FertilizerAnalysis.BaggedGrades.Single(g => g.ToString() == grade);
        double[] held = [.. Enumerable.Range(0, 3).Select(n => analysis.Content((PlantNutrient)n, UnitsNet.Mass.FromPounds(50)).Pounds)];
        Assert.Equal(nitrogen, held[0], 9);
        Assert.Equal(phosphate, held[1], 9);
        Assert.Equal(potash, held[2], 9);
    }
}
