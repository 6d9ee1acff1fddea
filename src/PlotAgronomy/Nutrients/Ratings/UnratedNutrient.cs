using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A nutrient of the report that a system has limits for but could not rate, and why.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class UnratedNutrient
{
    private readonly ScaleFacts facts;
    private readonly ImmutableArray<RatingScale> scales;

    internal UnratedNutrient(ScaleFacts facts, ImmutableArray<RatingScale> scales)
    {
        this.facts = facts;
        this.scales = scales;
    }

    /// <summary>Gets what was measured.</summary>
    public SoilAnalyte Analyte => scales[0].Analyte;

    /// <summary>Gets the reason in one sentence.</summary>
    public string Reason => facts.WhyUnrated(scales);

    /// <summary>Nutrient and reason.</summary>
    /// <returns>Text such as <c>potassium: ...</c>.</returns>
    public override string ToString() => $"{SoilWords.For(Analyte)}: {Reason}";
}
