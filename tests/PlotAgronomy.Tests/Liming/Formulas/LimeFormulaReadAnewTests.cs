using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>What a formula makes of its rows when they are read anew, against what the publications print.</summary>
public class LimeFormulaReadAnewTests
{
    private static LimeFormula ReadAnew(string id) =>
        LimeFormulaReader.Read(CsvTable.Embedded("Liming/Data/methods.csv").Rows.Single(r => r.Text("id") == id));

    public static TheoryData<string> Tables =>
        [
            .. CsvTable.Embedded("Liming/Data/tables.csv")
                .Rows.Select(r => r.Text("method_id"))
                .Distinct()
                .Where(id => id != "pennsylvania-turf"),
        ];

    [Theory, MemberData(nameof(Tables))]
    public void Every_printed_cell_is_found_and_none_where_the_table_is_blank(string id)
    {
        var formula = ReadAnew(id);
        var cells = CsvTable.Embedded("Liming/Data/tables.csv").Rows.Where(r => r.Text("method_id") == id).ToList();
        Assert.Equal(cells.Select(r => r.Number("target_ph")).Distinct().Order(), formula.Targets);
        foreach (double reading in cells.Select(r => r.Number("reading")).Distinct())
        {
            foreach (double target in formula.Targets)
            {
                var cell = cells.SingleOrDefault(r => r.Number("reading") == reading && r.Number("target_ph") == target);
                Assert.Equal(
                    cell is null ? null : LimeUnits.PoundsPerAcre(cell, "rate"),
                    formula.PoundsPerAcre(reading, Soil, target)
                );
            }
        }
    }

    [Theory]
    [InlineData("oregon-2025-sikora", null)]
    [InlineData("iowa-pm1688-table", "lime-table-slip")]
    [InlineData("ontario-smp", "lime-table-capped")]
    public void The_finding_of_a_table_s_marked_cells_is_known_before_any_is_read(string id, string? code) =>
        Assert.Equal(code, ReadAnew(id).CellFinding);

    [Theory]
    [InlineData("iowa-pm1688-table", 5.8, 6.9, true)]
    [InlineData("iowa-pm1688-table", 6.4, 6.9, false)]
    [InlineData("ontario-smp", 5.0, 6.5, true)]
    [InlineData("ontario-smp", 6.0, 6.5, false)]
    public void Only_cells_with_a_finding_of_their_own_are_marked(string id, double reading, double target, bool isMarked)
    {
        var formula = (LimeTableFormula)ReadAnew(id);
        formula.KernelTo(target, null).PoundsPerAcre(reading, double.NaN, out var remarks);
        Assert.Equal(isMarked ? LimeRemarks.CellMarked : LimeRemarks.None, remarks);
    }

    [Fact]
    public void The_equations_of_a_method_stand_in_the_order_of_their_targets()
    {
        // Tri-state E-2567 prints its equations from 6.8 down; at index 60: 71.4 - 1.03 x 60, 60.4 - 0.87 x 60, 49.3 - 0.71 x 60.
        var formula = ReadAnew("tri-state-1995-smp");
        Assert.Equal([6.0, 6.5, 6.8], formula.Targets);
        double[] tons = [.. formula.Targets.Select(target => formula.PoundsPerAcre(6, Soil, target)!.Value / 2000)];
        Assert.Equal(6.7, tons[0], 1e-9);
        Assert.Equal(8.2, tons[1], 1e-9);
        Assert.Equal(9.6, tons[2], 1e-9);
    }

    [Theory]
    [InlineData("tri-state-1995-organic", true)] // The equation is one of the water pH itself.
    [InlineData("wisconsin-a2809", true)] // Each equation subtracts, or adds, some tons for a unit of water pH.
    [InlineData("tri-state-1995-smp", false)]
    [InlineData("iowa-pm1688-equation", false)]
    [InlineData("kansas-mf2586", false)]
    [InlineData("nebraska-g1504-lower", false)]
    [InlineData("adams-evans", true)]
    [InlineData("north-carolina-mehlich", true)]
    [InlineData("georgia-lime-buffer-capacity", true)]
    [InlineData("vermont-aluminum", true)]
    [InlineData("texture-fallback", true)]
    [InlineData("oregon-2025-sikora", false)]
    [InlineData("missouri-woodruff", false)]
    [InlineData("pennsylvania-turf", false)]
    public void A_method_cannot_do_without_the_water_pH_where_its_sum_has_it(string id, bool needsIt) =>
        Assert.Equal(needsIt, ReadAnew(id).NeedsWaterPh);

    [Theory]
    [InlineData("adams-evans", "Adams-Evans or modified Adams-Evans or Moore-Sikora buffer pH", true)]
    [InlineData("tri-state-1995-smp", "SMP buffer pH", true)]
    [InlineData("iowa-pm1688-table", "SMP or Sikora buffer pH", true)]
    [InlineData("tri-state-1995-organic", "water pH", true)]
    [InlineData("texture-fallback", "water pH and a texture that is not sand", true)]
    [InlineData("pennsylvania-turf", "exchangeable acidity", false)]
    [InlineData("pennsylvania-field", "exchangeable acidity in meq/100 g", false)]
    [InlineData("vermont-aluminum", "reactive aluminum in ppm (modified Morgan)", false)]
    public void What_a_method_reads_is_said_and_whether_it_is_a_pH(string id, string words, bool isPh)
    {
        Assert.Equal(words, ReadAnew(id).Reads);
        Assert.Equal(isPh, ReadAnew(id).ReadsPh);
    }

    [Theory]
    [InlineData("tri-state-1995-organic", true)]
    [InlineData("texture-fallback", true)]
    [InlineData("tri-state-1995-smp", false)]
    [InlineData("oregon-2025-sikora", false)]
    [InlineData("vermont-aluminum", false)]
    public void Only_two_methods_read_the_water_pH_itself(string id, bool isRead) =>
        Assert.Equal(isRead, ReadAnew(id).ReadsWaterPh);

    [Theory]
    [InlineData(SoilTexture.SandyLoam, 8)]
    [InlineData(SoilTexture.SiltLoam, 10.5)]
    [InlineData(SoilTexture.Clay, 15)]
    public void A_texture_is_read_in_its_own_column_or_the_nearest(SoilTexture texture, double poundsPer100SquareFeet)
    {
        // The garden table at pH 5.0: 8, 10.5 and 15 lb/100 ft2 on sandy loam, loam and clay loam.
        var soil = PlotSoil.For(Report(5.0) with { Texture = texture });
        double expected = ApplicationRate.FromPoundsPerThousandSquareFeet(10 * poundsPer100SquareFeet).PoundsPerAcre;
        Assert.Equal(expected, ReadAnew("texture-fallback").PoundsPerAcre(5.0, soil, 6.5)!.Value, 1e-9);
    }

    private static PlotSoil Soil => PlotSoil.For(Report(5.0));
}
