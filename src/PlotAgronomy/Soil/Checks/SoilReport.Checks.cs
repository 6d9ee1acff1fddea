using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <content>Looks for slips between the paper report and what was typed: wrong unit,
/// wrong column, wrong buffer, old sample.</content>
/// <remarks>What cannot be is refused by the types; what should not be is a finding here. Limits
/// are common practice unless a source is named.</remarks>
public sealed partial record SoilReport
{
    /// <summary>Looks through a whole report.</summary>
    /// <param name="today">Day of reading, for the age of the sample.</param>
    /// <param name="earlier">An earlier report of the same plot, when there is one: a sudden doubling shows a wrong unit.</param>
    /// <returns>The findings, most serious first; empty when nothing looks odd.</returns>
    public ImmutableArray<Finding> Check(DateOnly today, SoilReport? earlier = null) => CheckOn(today, earlier);

    /// <summary>The same where the day of reading may not be known; then the age is not looked at.</summary>
    internal ImmutableArray<Finding> CheckOn(DateOnly? today, SoilReport? earlier = null)
    {
        return Finding.InOrder([
            .. PhChecks.Of(this),
            .. SampleChecks.Of(this, today),
            .. ReadingTwice.Of(this),
            .. ReadingChecks.Of(this),
            .. SaturationChecks.Of(this),
            .. earlier is null ? [] : ReadingChecks.Against(this, earlier),
        ]);
    }

    /// <summary>Looks at a number typed where a pH belongs, before a pH is made of it.</summary>
    /// <param name="typed">Number as typed; finite.</param>
    /// <returns>A finding when no soil has this pH; empty when it can be one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static ImmutableArray<Finding> CheckTypedPh(double typed)
    {
        Guard.Finite(typed, "pH");
        return PhChecks.OfTyped(typed);
    }

    /// <summary>Compares the sampled depth with the depth a method is calibrated for.</summary>
    /// <param name="methodDepth">Depth the method assumes; above 0.</param>
    /// <param name="method">Method in words.</param>
    /// <returns>A finding when they differ by more than an inch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Depth not above 0, NaN or infinite.</exception>
    public ImmutableArray<Finding> CheckDepth(Length methodDepth, string method)
    {
        Guard.NotBlank(method);
        double expectedInches = methodDepth.Inches;
        Guard.Above(expectedInches, 0, "in", nameof(methodDepth));
        return SampleChecks.OfDepth(this, expectedInches, method);
    }
}
