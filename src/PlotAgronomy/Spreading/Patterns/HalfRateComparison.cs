using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Two ways to sow half the rate twice, against the full rate once.</summary>
/// <remarks>Two half rates at right angles give (f(x) + g(y)) / 2: the CV falls by the square root of two only, and the thinnest
/// spot is as thin as before. Half the rate at half the swath, all passes parallel, evens out far more (SPREAD-S15, SPREAD-S16).
/// One institution still prints the right-angle way (SPREAD-S14).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class HalfRateComparison : IWorkedResult
{
    internal HalfRateComparison() { }

    /// <summary>Gets the full rate at the full swath.</summary>
    public required OverlappedPattern FullRate { get; init; }

    /// <summary>Gets half the rate at half the swath, all passes parallel.</summary>
    public required OverlappedPattern HalfSwath { get; init; }

    /// <summary>Gets the population CV of two half rates at right angles, in percent.</summary>
    public double RightAnglesPopulationCvPercent => PatternMath.RightAnglesCv(FullRate.PopulationCvPercent);

    /// <summary>Gets the smallest amount of two half rates at right angles as a part of the mean: no better than one full
    /// rate.</summary>
    internal double RightAnglesLowestToMean => FullRate.LowestToMean;

    /// <summary>Gets a value indicating whether half the swath is the more even way.</summary>
    public bool HalfSwathIsMoreEven => HalfSwath.PopulationCvPercent <= RightAnglesPopulationCvPercent;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder([.. FullRate.Findings, .. HalfSwath.Findings]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.All.SourcesOf("spread-half-swath", "spread-right-angles");

    /// <summary>Compares the two ways.</summary>
    /// <param name="pattern">Single pass.</param>
    /// <param name="swath">Spacing of the passes at the full rate; above 0.</param>
    /// <param name="driving">How passes follow each other.</param>
    /// <returns>Both, with their evenness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static HalfRateComparison For(SpreadPattern pattern, Length swath, DrivingMethod driving)
    {
        double feet = swath.Feet;
        return new()
        {
            FullRate = OverlappedPattern.For(pattern, swath, driving),
            HalfSwath = OverlappedPattern.For(pattern, Length.FromFeet(feet / 2), driving),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-right-angles"]
                .Line(
                    $"{Amounts.Print(RightAnglesPopulationCvPercent, 2)} %",
                    ("CV of the full rate", Amounts.Print(FullRate.PopulationCvPercent, 2)),
                    ("square root of 2", Amounts.Print(PatternMath.SquareRootOfTwo, 3))
                ),
            SpreadingFormulas
                .All["spread-half-swath"]
                .Line(
                    $"{Amounts.Print(HalfSwath.PopulationCvPercent, 2)} %",
                    (
                        "standard deviation at half the swath",
                        Amounts.Print(HalfSwath.DeviationAt(HalfSwath.PopulationCvPercent), 3)
                    ),
                    ("mean", Amounts.Print(HalfSwath.Mean, 3))
                ),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
