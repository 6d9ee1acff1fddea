using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Liming;

/// <summary>What is found by an id, checked and not.</summary>
public class LimeCatalogTests
{
    [Fact]
    public void Methods_from_memory_stand_apart()
    {
        Assert.Equal(25, LimeMethod.All.Length + LimeMethod.Unchecked.Length);
        Assert.All(LimeMethod.Unchecked, m => Assert.Equal(DataStatus.Memory, m.Status));
        Assert.Contains(LimeMethod.Oregon, LimeMethod.All);
        Assert.Contains(LimeMethod.Find("adams-evans"), LimeMethod.Unchecked);
        Assert.Equal(
            ["north-carolina-mehlich", "iowa-pm1688-table", "pennsylvania-field", "georgia-lime-buffer-capacity"],
            new[] { LimeMethod.NorthCarolina, LimeMethod.Find("iowa-pm1688-table"), LimeMethod.Find("pennsylvania-field"), LimeMethod.Find("georgia-lime-buffer-capacity") }.Select(m => m.Id));
    }

    [Fact]
    public void An_unknown_method_names_those_there_are()
    {
        Assert.True(LimeMethod.TryFind("Adams-Evans", out var method, out string problem));
        Assert.Equal(("adams-evans", ""), (method.Id, problem));
        Assert.False(LimeMethod.TryFind(null, out method, out problem));
        Assert.Null(method);
        Assert.Contains("oregon-2025-sikora", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_basis_asks_the_laboratory()
    {
        Assert.False(LimeBasis.TryFind("tons", out _, out string problem));
        Assert.Contains("Ask the laboratory", problem, StringComparison.Ordinal);
        Assert.Contains(LimeBasis.AdamsEvansAgLime, LimeBasis.Unchecked);
        Assert.Contains(LimeBasis.GroundLimestone, LimeBasis.All);
    }

    [Fact]
    public void An_index_with_a_factor_from_memory_is_unchecked()
    {
        Assert.Contains(LimeIndex.Find("minnesota-enp"), LimeIndex.Unchecked);
        Assert.Contains(LimeIndex.Find("ohio-enp"), LimeIndex.All);
        Assert.Contains(LimeIndex.Find("iowa-ecce"), LimeIndex.All);
        Assert.True(LimeIndex.TryFind("oregon-score", out var index, out _));
        Assert.Same(LimeIndex.OregonScore, index);
        Assert.Equal(20, LimeIndex.All.Length + LimeIndex.Unchecked.Length);
    }

    [Fact]
    public void No_compound_is_from_memory()
    {
        Assert.Equal(14, LimingCompound.All.Length);
        Assert.Empty(LimingCompound.Unchecked);
        Assert.Equal([100, 108.6], new[] { LimingCompound.Calcite, LimingCompound.Find("dolomite") }.Select(c => Math.Round(c.CcePercent, 1)));
        Assert.False(LimingCompound.TryFind("chalk", out _, out string problem));
        Assert.Contains("calcite", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(LimingForm.SugarBeetLime, "sugar beet lime"), InlineData(LimingForm.GroundLimestone, "ground limestone")]
    public void A_form_has_its_word(LimingForm form, string word) => Assert.Equal(word, LimingWords.Forms[form]);
}
