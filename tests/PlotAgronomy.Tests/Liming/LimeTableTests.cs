using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Integrity of this room's tables: their form, not their truth.</summary>
public class LimeTableTests
{
    [Theory]
    [InlineData("Liming/Data/methods.csv", 25)]
    [InlineData("Liming/Data/tables.csv", 573)]
    [InlineData("Liming/Data/linear.csv", 21)]
    [InlineData("Liming/Data/indices.csv", 20)]
    [InlineData("Liming/Data/index-bands.csv", 47)]
    [InlineData("Liming/Data/bases.csv", 24)]
    [InlineData("Liming/Data/constants.csv", 79)]
    [InlineData("Liming/Data/compounds.csv", 14)]
    [InlineData("Liming/Data/vermont.csv", 17)]
    [InlineData("Liming/Data/texture.csv", 15)]
    public void A_table_has_its_rows(string name, int rows) => Assert.Equal(rows, CsvTable.Embedded(name).Rows.Length);

    [Fact]
    public void No_cell_of_a_table_stands_twice()
    {
        var cells = CsvTable.Embedded("Liming/Data/tables.csv").Rows.Select(r => (r.Text("method_id"), r.Number("reading"), r.Number("target_ph"))).ToList();
        Assert.Equal(cells.Count, cells.Distinct().Count());
    }

    [Fact]
    public void Every_table_falls_as_the_buffer_pH_rises_and_rises_with_the_target()
    {
        foreach (var method in CsvTable.Embedded("Liming/Data/tables.csv").Rows.GroupBy(r => r.Text("method_id")))
        {
            int sign = LimeMethod.Find(method.Key).Formula.ReadsPh ? -1 : 1;
            foreach (var column in method.GroupBy(r => r.Number("target_ph")))
            {
                var rates = column.OrderBy(r => sign * r.Number("reading")).Select(r => r.Number("rate")).ToList();
                Assert.Equal(rates.Order(), rates);
            }

            foreach (var row in method.GroupBy(r => r.Number("reading")))
            {
                var rates = row.OrderBy(r => r.Number("target_ph")).Select(r => r.Number("rate")).ToList();
                Assert.Equal(rates.Order(), rates);
            }
        }
    }

    [Fact]
    public void A_table_covers_the_readings_its_method_claims()
    {
        foreach (var rows in CsvTable.Embedded("Liming/Data/tables.csv").Rows.GroupBy(r => r.Text("method_id")))
        {
            var method = LimeMethod.Find(rows.Key);
            Assert.Equal(method.LowestReading, rows.Min(r => r.Number("reading")));
            Assert.Equal(method.HighestReading, rows.Max(r => r.Number("reading")));
        }
    }

    [Fact]
    public void A_method_from_memory_has_no_row_that_was_read_and_the_other_way_round()
    {
        foreach (string table in new[] { "Liming/Data/tables.csv", "Liming/Data/linear.csv" })
        {
            Assert.All(CsvTable.Embedded(table).Rows, r => Assert.Equal(LimeMethod.Find(r.Text("method_id")).Status, r.Status()));
        }
    }

    [Fact]
    public void The_bands_of_an_index_leave_no_gap_and_their_factors_rise_as_sieves_get_finer()
    {
        foreach (var index in LimeIndex.Everything.Where(i => i.Bands.Length > 0))
        {
            Assert.Equal(1, index.Bands[^1].Factor);
            Assert.Null(index.Bands[^1].HeldOnMesh);
            Assert.All(index.Bands.Zip(index.Bands.Skip(1)), p =>
            {
                Assert.Equal(p.First.HeldOnMesh, p.Second.PassingMesh);
                Assert.True(p.First.Factor <= p.Second.Factor);
            });
        }
    }

    [Fact]
    public void Limits_of_readings_that_no_source_prints_are_marked_practice()
    {
        Assert.All(CsvTable.Embedded("Liming/Data/methods.csv").Rows, r => Assert.Equal(r.Text("limits_printed") == "no", r.Text("locator").Contains("practice", StringComparison.Ordinal) && !LimeMethod.Find(r.Text("id")).LimitsArePrinted));
        Assert.All(CsvTable.Embedded("Liming/Data/tables.csv").Rows.Select(r => r.Text("method_id")).Distinct(), id => Assert.True(LimeMethod.Find(id).LimitsArePrinted));
    }

    [Fact]
    public void Vermonts_steps_leave_no_gap()
    {
        var method = LimeMethod.Find("vermont-aluminum");
        foreach (double ph in new[] { 4.0, 5.5, 5.6, 6.1, 6.2, 6.4 })
        {
            foreach (double aluminum in new[] { 0.0, 40, 41, 70, 71, 100, 101, 150, 151, 200, 201, 250, 251, 300, 301, 900 })
            {
                Assert.NotNull(method.Formula.PoundsPerAcre(aluminum, PlotSoil.For(LimeSamples.Report(ph)), 6.5));
            }
        }
    }

    [Fact]
    public void Every_kind_with_a_target_is_in_the_catalog()
    {
        var known = KindCatalog.Standard.Kinds.Select(k => k.Id).ToHashSet();
        Assert.Empty(LimeTargetRow.All.SelectMany(r => r.Kinds).Where(k => !known.Contains(k)));
        Assert.All(LimeTargetRow.All, r => Assert.True(r.TargetPh is >= 5 and <= 7 || r.LowestPh is >= 5 and <= 7));
        Assert.Contains(Institution.Find("pennsylvania"), LimeTarget.Institutions);
    }

    [Fact]
    public void Every_standing_finding_and_placement_institution_is_known()
    {
        Assert.All(LimeMethod.Everything.Select(m => m.StandingFinding).OfType<string>(), code => Assert.Contains(code, FindingCatalog.Codes));
        Assert.All(LimeBasis.Everything, b => Assert.True(b.Figure is null || b.Figure.Value > 0));
    }
}
