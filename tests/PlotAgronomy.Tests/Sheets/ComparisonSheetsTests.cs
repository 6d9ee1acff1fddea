using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

public class ComparisonSheetsTests
{
    public static TheoryData<string> All => ["systems", "lime", "lots", "bag"];

    private static PlotPlan Plan(string demo) => PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{demo}.json"))).Plan!;

    private static FieldSheet Sheet(string name) => name switch
    {
        "systems" => FieldSheet.Of(Plan("clover-lots").CompareSystems(includeFromMemory: true)),
        "lime" => FieldSheet.Of(Plan("clover-lots").CompareLime(includeFromMemory: true)),
        "lots" => FieldSheet.Of(Plan("clover-lots").CompareSeedLots()),
        _ => FieldSheet.Of(Plan("store-blend").CompareStoreBlends()),
    };

    [Theory, MemberData(nameof(All))]
    public void Every_figure_has_a_code_of_its_own_and_every_source_stands_in_the_list(string name)
    {
        var sheet = Sheet(name);
        Assert.NotEmpty(sheet.Figures);
        Assert.Equal(sheet.Figures.Length, sheet.Figures.Select(f => f.Code).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(sheet.Figures.SelectMany(f => f.Sources), source => Assert.Contains(source, sheet.Sources));
        Assert.All(sheet.Findings, f => Assert.Contains(f.Source, sheet.Sources));
        Assert.All(sheet.Sections.SelectMany(s => s.Blocks).OfType<SheetTable>(), t => Assert.All(t.Rows, r => Assert.Equal(t.Columns.Length, r.Cells.Length)));
    }

    [Theory, MemberData(nameof(All))]
    public void No_finding_is_lost_and_none_is_told_twice(string name)
    {
        var sheet = Sheet(name);
        var told = sheet.Sections.SelectMany(s => s.Blocks).SelectMany(b => b switch
        {
            SheetSentence sentence => [sentence.Text],
            SheetRemarks remarks => remarks.Remarks.Select(r => r.Text),
            _ => Enumerable.Empty<string>(),
        }).ToList();
        Assert.All(sheet.Findings.Select(f => f.Code).Distinct().Where(c => c != "lime-not-comparable"), code => Assert.Contains(told, t => t.Contains($"[{code}]", StringComparison.Ordinal)));
        var listed = sheet.Sections.Single(s => s.Heading.StartsWith("Findings", StringComparison.Ordinal)).Blocks.OfType<SheetRemarks>().SelectMany(r => r.Remarks).Select(r => r.Text).ToList();
        Assert.All(listed, text => Assert.Single(told, t => t.Contains(text, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(4.0, true)]
    [InlineData(9.0, true)]
    [InlineData(3.99, false)]
    [InlineData(9.01, false)]
    [InlineData(-1.0, false)]
    [InlineData(double.NaN, false)]
    [InlineData(double.PositiveInfinity, false)]
    public void A_target_pH_lies_between_4_and_9(double ph, bool allowed)
    {
        var refused = Record.Exception(() => FieldSheet.Of(Plan("clover-lots").CompareLime(ph)));
        Assert.Equal(allowed, refused is null);
        Assert.True(allowed || refused is ArgumentOutOfRangeException);
    }

    [Fact]
    public void What_a_plan_does_not_offer_cannot_be_compared()
    {
        Assert.Throws<InvalidOperationException>(() => FieldSheet.Of(Plan("fall-blend").CompareSeedLots()));
        Assert.Throws<InvalidOperationException>(() => FieldSheet.Of(Plan("fall-blend").CompareStoreBlends()));
        Assert.Throws<ArgumentOutOfRangeException>(() => FieldSheet.Of(Plan("fall-blend").CompareSystems((CropRow)999)));
    }

    [Fact]
    public void A_kind_offered_but_not_grown_is_held_to_one_full_stand()
    {
        string json = File.ReadAllText(Repository.PathOf("samples/data/clover-lots.json"))
            .Replace("\"seedLots\": [", "\"seedLots\": [\n{ \"kind\": \"chicory\", \"lot\": \"x\", \"pureSeed\": \"97 %\", \"germination\": \"80 %\", \"tested\": \"2026-06-01\", \"package\": \"1 lb\", \"price\": 10 },\n{ \"kind\": \"chicory\", \"lot\": \"y\", \"pureSeed\": \"90 %\", \"germination\": \"80 %\", \"tested\": \"2026-06-01\", \"package\": \"1 lb\", \"price\": 10 },", StringComparison.Ordinal);
        var sheet = FieldSheet.Of(PlanFile.Read(json).Plan!.CompareSeedLots());
        Assert.Equal(2, sheet.Sections.Count(s => s.Heading.EndsWith("what an acre costs", StringComparison.Ordinal)));
        var chicory = sheet.Sections.First(s => s.Heading.StartsWith("Chicory", StringComparison.Ordinal));
        double full = KindCatalog.Standard.Find("chicory").FullRange(SowingMethod.Broadcast).Full.PoundsPerAcre;
        Assert.Contains($"{Amounts.Print(full, 2)} lb of pure live seed per acre", chicory.Blocks.OfType<SheetSentence>().First().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_crop_row_is_found_by_its_words()
    {
        Assert.All(Enum.GetValues<CropRow>(), row =>
        {
            Assert.True(CropRows.TryFind($" {CropRows.WordsFor(row).ToUpperInvariant()}", out var found, out string problem));
            Assert.Equal((row, ""), (found, problem));
        });
        Assert.False(CropRows.TryFind(null, out _, out string why));
        Assert.Contains("'alfalfa'", why, StringComparison.Ordinal);
    }
}
