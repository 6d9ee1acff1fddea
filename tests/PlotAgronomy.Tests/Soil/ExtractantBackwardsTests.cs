using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Soil;

/// <summary>A published factor between extractants taken the other way round.</summary>
public class ExtractantBackwardsTests
{
    /// <summary>Published: Bray P-1 x 1.35 = Mehlich-3 (Ohio and Indiana); back by hand: 27 / 1.35 = 20.</summary>
    [Fact]
    public void There_and_back_is_the_reading_again()
    {
        var back = ExtractantConversion.TriStateBrayToMehlich3.Backwards;
        var mehlich = SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 27, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
        var bray = back.Convert(mehlich);
        Assert.Equal(20, bray.Converted.PrintedValue, 1e-9);
        Assert.Equal(Extractant.BrayP1, bray.Converted.Extractant);
        Assert.Contains(bray.Findings, f => f.Text.Contains("taken backwards", StringComparison.Ordinal));
        Assert.Same(ExtractantConversion.TriStateBrayToMehlich3, back.Backwards);
        Assert.Throws<ArgumentException>(() => back.Convert(bray.Converted));
        Assert.All(ExtractantConversion.All, c => Assert.Equal(1, c.Factor * c.Backwards.Factor, 1e-12));
    }
}
