using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Which swaths a pattern allows, and which one to walk.</summary>
/// <remarks>All swaths are tried from two tray spacings to the whole width of the pattern: a measured pattern at every tray
/// spacing,
/// a formula at a hundredth of its width. The acceptable ones need not be one run (SPREAD-S18). The default is the widest swath
/// below the first that fails; a run further out tolerates little driving error and is offered with a finding.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SwathAdvice : IWorkedResult
{
    private const int FormulaSteps = 100;

    internal SwathAdvice() { }

    /// <summary>Gets how the passes follow each other.</summary>
    public required DrivingMethod Driving { get; init; }

    /// <summary>Gets the limit on the CV, in percent.</summary>
    public required double LimitPercent { get; init; }

    /// <summary>Gets which CV the limit was held against.</summary>
    public required CvConvention Convention { get; init; }

    /// <summary>Gets every run of acceptable swaths, narrow to wide.</summary>
    public required ImmutableArray<SwathInterval> Acceptable { get; init; }

    /// <summary>Gets the widest swath below the first failure; null when even the narrowest fails.</summary>
    public required Length? Recommended { get; init; }

    /// <summary>Gets the width between the points with half of the highest catch (SPREAD-S20).</summary>
    public required Length HalfMaximumWidth { get; init; }

    /// <summary>Gets the width between the points with half of the middle: the mean between the highest tray on each side, so
    /// that a
    /// dip in the middle does not mislead (SPREAD-S15).</summary>
    public required Length HalfMiddleWidth { get; init; }

    /// <summary>Gets half of the whole throw: the swath when each pass reaches the wheel tracks of the last
    /// (SPREAD-S19).</summary>
    public required Length HalfThrow { get; init; }

    /// <summary>Gets the offset of the centre of mass of the pattern; positive when it leans to the right.</summary>
    public required Length Lean { get; init; }

    private (double Left, double Right) AtHalfMaximum { get; init; }

    private (double Left, double Right) AtHalfMiddle { get; init; }

    private double ThrowFeet { get; init; }

    private double LeanFeet { get; init; }

    private (double Moment, double Caught) Weights { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        SpreadingFormulas.All.SourcesOf(
            "spread-half-middle-width",
            "spread-recommended-swath",
            "spread-half-throw",
            "spread-half-maximum-width"
        );

    /// <summary>Finds the swaths a pattern allows.</summary>
    /// <param name="pattern">Single pass.</param>
    /// <param name="driving">How passes follow each other.</param>
    /// <param name="limitPercent">Largest CV accepted, in percent; above 0. Null takes 15 %.</param>
    /// <param name="convention">Which CV the limit is held against.</param>
    /// <returns>The advice.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SwathAdvice For(
        SpreadPattern pattern,
        DrivingMethod driving,
        double? limitPercent = null,
        CvConvention convention = CvConvention.Sample
    )
    {
        ArgumentNullException.ThrowIfNull(pattern);
        Guard.Defined(driving);
        Guard.Defined(convention);
        double limit = limitPercent is { } given
            ? Guard.Above(given, 0, "%", nameof(limitPercent))
            : SpreadingConstants.All["cv-good"];
        var tried = Swaths(pattern).Select(s => (Feet: s, Good: Cv(pattern, s, driving, convention) <= limit)).ToList();
        var runs = Runs(tried);
        double? recommended = tried[0].Good ? runs[0].To.Feet : null;
        var weights = PatternShape.Weights(pattern);
        double lean = SpreaderMath.Ratio(weights.Moment, weights.Caught);
        double wholeThrow = PatternShape.Throw(pattern);
        var atHalfMaximum = PatternMath.OutermostAt(pattern, PatternShape.Highest(pattern) / 2);
        var atHalfMiddle = PatternMath.OutermostAt(pattern, PatternShape.Middle(pattern) / 2);
        return new SwathAdvice
        {
            Driving = driving,
            LimitPercent = limit,
            Convention = convention,
            Acceptable = runs,
            Recommended = recommended is { } feet ? Length.FromFeet(feet) : null,
            HalfMaximumWidth = WidthOf(atHalfMaximum),
            HalfMiddleWidth = WidthOf(atHalfMiddle),
            HalfThrow = Length.FromFeet(PatternShape.HalfThrow(wholeThrow)),
            AtHalfMaximum = atHalfMaximum,
            AtHalfMiddle = atHalfMiddle,
            ThrowFeet = wholeThrow,
            Lean = Length.FromFeet(lean),
            LeanFeet = lean,
            Weights = weights,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-recommended-swath"]
                .Line(Recommended is { } swath ? Amounts.Print(swath, "ft", 1) : "none"),
            SpreadingFormulas
                .All["spread-half-maximum-width"]
                .Line(
                    Amounts.Print(HalfMaximumWidth, "ft", 1),
                    ("reach to the right at half the highest catch", Print(AtHalfMaximum.Right)),
                    ("reach to the left", Print(-AtHalfMaximum.Left))
                ),
            SpreadingFormulas
                .All["spread-half-middle-width"]
                .Line(
                    Amounts.Print(HalfMiddleWidth, "ft", 1),
                    ("reach to the right at half the middle", Print(AtHalfMiddle.Right)),
                    ("reach to the left", Print(-AtHalfMiddle.Left))
                ),
            SpreadingFormulas.All["spread-half-throw"].Line(Amounts.Print(HalfThrow, "ft", 1), ("whole throw", Print(ThrowFeet))),
            SpreadingFormulas
                .All["spread-lean"]
                .Line(
                    Amounts.Print(Lean, "ft", 1),
                    ("sum of place x catch", Amounts.Print(Weights.Moment, 2)),
                    ("sum of catches", Amounts.Print(Weights.Caught, 2))
                ),
        ];

    private static Length WidthOf((double Left, double Right) ends) =>
        Length.FromFeet(PatternShape.Width(ends.Right, -ends.Left));

    private static IEnumerable<double> Swaths(SpreadPattern pattern)
    {
        double width = pattern.RightFeet - pattern.LeftFeet;
        double step = pattern.IsMeasured ? pattern.SpacingFeet : width / FormulaSteps;
        int count = (int)Math.Round(width / step, MidpointRounding.AwayFromZero);
        return Enumerable.Range(2, Math.Max(1, count - 1)).Select(i => i * step);
    }

    private static double Cv(SpreadPattern pattern, double swathFeet, DrivingMethod driving, CvConvention convention)
    {
        var overlapped = OverlappedPattern.For(pattern, Length.FromFeet(swathFeet), driving);
        return convention == CvConvention.Sample ? overlapped.SampleCvPercent : overlapped.PopulationCvPercent;
    }

    private static ImmutableArray<SwathInterval> Runs(List<(double Feet, bool Good)> tried)
    {
        var runs = ImmutableArray.CreateBuilder<SwathInterval>();
        for (int i = 0; i < tried.Count; i++)
        {
            if (!tried[i].Good)
            {
                continue;
            }

            int start = i;
            while (i + 1 < tried.Count && tried[i + 1].Good)
            {
                i++;
            }

            runs.Add(new SwathInterval { From = Length.FromFeet(tried[start].Feet), To = Length.FromFeet(tried[i].Feet) });
        }

        return runs.ToImmutable();
    }

    private IEnumerable<Finding> Remarks()
    {
        yield return FindingCatalog.Create(SpreadingCodes.FieldWorse);
        if (Recommended is null)
        {
            yield return FindingCatalog.Create(SpreadingCodes.NoSwath);
        }

        foreach (var run in Acceptable.Skip(Recommended is null ? 0 : 1))
        {
            double from = run.From.Feet;
            double to = run.To.Feet;
            yield return FindingCatalog.Create(SpreadingCodes.OuterSwath, ("from", Print(from)), ("to", Print(to)));
        }

        if (Math.Abs(LeanFeet) > ThrowFeet * SpreadingConstants.All["lean-share"] / 100)
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.Skewed,
                ("lean", Print(Math.Abs(LeanFeet))),
                ("side", LeanFeet > 0 ? "right" : "left")
            );
        }
    }

    private static string Print(double number) => Amounts.Print(number, 1);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
