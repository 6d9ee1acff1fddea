namespace PlotAgronomy.Nutrients;

/// <content>What the rule answers.</content>
public sealed partial class SecondaryRule
{
    /// <summary>Answers for a report.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="isLimeDue">Whether lime is to be spread: then dolomitic lime brings magnesium.</param>
    /// <param name="tissueSulfur">Sulfur in the plants' dry matter, when tissue was tested.</param>
    /// <param name="magnesiumSaturation">Share of the exchange capacity that magnesium holds, when it was computed.</param>
    /// <returns>The rate and the reason; without a rate, and with a finding, when the report lacks what the rule asks.</returns>
    public SecondaryAnswer Answer(
        PlotSoil soil,
        bool isLimeDue = false,
        Fraction? tissueSulfur = null,
        Fraction? magnesiumSaturation = null
    )
    {
        ArgumentNullException.ThrowIfNull(soil);
        var known = new SecondaryRequest
        {
            IsLimeDue = isLimeDue,
            TissueSulfur = tissueSulfur,
            MagnesiumSaturation = magnesiumSaturation,
        };
        return new SecondaryAnswer(this, soil, known, new SecondaryRuleSum(Rows, soil, known).Run());
    }
}
