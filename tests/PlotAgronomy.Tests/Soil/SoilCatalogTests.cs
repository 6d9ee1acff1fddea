using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Soil;

/// <summary>What is found by an id, and the words of the room.</summary>
public class SoilCatalogTests
{
    [Fact]
    public void Acidity_terms_from_memory_stand_apart()
    {
        Assert.Equal([AcidityTerm.Clemson, AcidityTerm.MidwestLaboratory, AcidityTerm.SmpWithSodium, AcidityTerm.Find("tri-state-1995")], AcidityTerm.All);
        Assert.Equal(["north-carolina", "missouri"], AcidityTerm.Unchecked.Select(t => t.Id));
        Assert.All(AcidityTerm.Unchecked, t => Assert.Equal(DataStatus.Memory, t.Status));
    }

    [Fact]
    public void An_unknown_acidity_term_names_those_there_are()
    {
        Assert.True(AcidityTerm.TryFind("Clemson", out var term, out string problem));
        Assert.Equal((AcidityTerm.Clemson, ""), (term, problem));
        Assert.False(AcidityTerm.TryFind(null, out term, out problem));
        Assert.Null(term);
        Assert.Contains("laboratory-midwest", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void No_extractant_conversion_is_from_memory()
    {
        Assert.Equal(6, ExtractantConversion.All.Length);
        Assert.Empty(ExtractantConversion.Unchecked);
        Assert.Equal(1.14, ExtractantConversion.TriStateAcetateToMehlich3.Factor, 1e-12);
        Assert.True(ExtractantConversion.TryFind("tri-state-bray-to-mehlich3", out var found, out _));
        Assert.Equal(ExtractantConversion.TriStateBrayToMehlich3, found);
        Assert.False(ExtractantConversion.TryFind("bray", out _, out string problem));
        Assert.Contains("laboratory-mehlich3-to-bray", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Extractant.Mehlich3Colorimetric, "Mehlich-3 colorimetric"), InlineData(Extractant.Mehlich3Icp, "Mehlich-3 ICP")]
    [InlineData(Extractant.NotStated, "an extractant the report does not name"), InlineData(Extractant.HydrochloricAcid, "0.1 N HCl")]
    public void An_extractant_is_named_in_a_sentence(Extractant extractant, string words) => Assert.Equal(words, SoilWords.For(extractant));

    [Fact]
    public void An_analyte_opens_a_sentence_in_words() => Assert.Equal("Nitrate nitrogen", SoilWords.Opening(SoilAnalyte.NitrateNitrogen));

    [Fact]
    public void A_missing_buffer_is_asked_for_by_its_name()
    {
        var balance = CationBalance.For(SoilSamples.Report(SoilSamples.Constructed, null), AcidityTerm.Clemson);
        Assert.Contains(balance.Findings, f => f.Text.Contains("Adams-Evans, modified Adams-Evans, Moore-Sikora", StringComparison.Ordinal));
    }
}
