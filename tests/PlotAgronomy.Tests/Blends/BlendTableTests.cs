using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Blends;

/// <summary>Integrity of the room's tables: their form, not their truth.</summary>
public class BlendTableTests
{
    public static TheoryData<string, string> Selectors =>
        new() { { "Blends/Data/group-caps.csv", "selects" }, { "Blends/Data/density-targets.csv", "selects" }, { "Blends/Data/surface-grain.csv", "selects" }, { "Blends/Data/companion-limits.csv", "host_selects" }, { "Blends/Data/companion-limits.csv", "companion_selects" } };

    [Theory, MemberData(nameof(Selectors))]
    public void Every_selector_finds_kinds_and_names_only_known_ones(string table, string column)
    {
        var known = KindCatalog.Standard.Kinds;
        foreach (var row in CsvTable.Embedded(table).Rows)
        {
            var selector = KindSelector.Read(row, column);
            Assert.Contains(known, selector.Selects);
            Assert.All(selector.KindIds, id => Assert.Contains(known, k => k.Id == id));
        }
    }

    [Theory]
    [InlineData("clover")]
    [InlineData("group=clover")]
    [InlineData("group=0")]
    [InlineData("life=short")]
    public void An_unknown_selector_is_an_error(string text) =>
        Assert.Throws<DataFormatException>(() => KindSelector.Read(CsvTable.Parse("t.csv", $"selects\n{text}\n").Rows[0], "selects"));

    [Fact]
    public void Caps_and_totals_rise()
    {
        Assert.All(CsvTable.Embedded("Blends/Data/group-caps.csv").Rows, r => Assert.True(r.Number("share_low") <= r.Number("share_high")));
        var totals = CsvTable.Embedded("Blends/Data/stand-totals.csv").Rows;
        Assert.Equal(totals.Select(r => r.Number("total_high")).Order(), totals.Select(r => r.Number("total_high")));
        Assert.Equal(3, totals.Length);
    }
}
