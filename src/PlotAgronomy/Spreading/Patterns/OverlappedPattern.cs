using System.Collections.Immutable;
using System.Runtime.InteropServices;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What lies on the ground when passes a swath apart overlap, over one period: a swath in one direction, two back and
/// forth, because left-on-left and right-on-right joints differ.</summary>
/// <remarks>D(x) = sum of p(x - kS) over the passes k, each second pass mirrored when driving back and forth (SPREAD-S18). A
/// measured
/// pattern is taken at its trays when the swath falls on them, so that the mean is exactly spacing / swath x total catch; else at
/// eight points between trays on straight lines, with a finding. CV = standard deviation / mean.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class OverlappedPattern : IWorkedResult
{
    private const int MostPassesShown = 6;

    internal OverlappedPattern() { }

    /// <summary>Gets the single pass.</summary>
    public required SpreadPattern Pattern { get; init; }

    /// <summary>Gets the spacing of the passes.</summary>
    public required Length Swath { get; init; }

    /// <summary>Gets how the passes follow each other.</summary>
    public required DrivingMethod Driving { get; init; }

    /// <summary>Gets the amounts at the positions of one period, in the unit of the trays.</summary>
    public required ImmutableArray<double> Amounts { get; init; }

    /// <summary>Gets the offset of the first position from the path of a pass.</summary>
    public required Length FirstPosition { get; init; }

    /// <summary>Gets the distance between positions.</summary>
    public required Length Step { get; init; }

    /// <summary>Gets the mean amount, in the unit of the trays.</summary>
    public required double Mean { get; init; }

    /// <summary>Gets the coefficient of variation in percent, deviations divided by the number of positions.</summary>
    public required double PopulationCvPercent { get; init; }

    /// <summary>Gets the coefficient of variation in percent, deviations divided by the number of positions less one.</summary>
    public required double SampleCvPercent { get; init; }

    /// <summary>Gets the smallest amount as a part of the mean; a pure number.</summary>
    public double LowestToMean => Amounts.Min() / Mean;

    /// <summary>Gets the largest amount as a part of the mean; a pure number.</summary>
    public double HighestToMean => Amounts.Max() / Mean;

    /// <summary>Gets the verdict on the sample CV, the larger of the two.</summary>
    public UniformityVerdict Verdict =>
        SampleCvPercent <= SpreadingConstants.All["cv-good"] ? UniformityVerdict.Good
        : SampleCvPercent <= SpreadingConstants.All["cv-workable"] ? UniformityVerdict.Satisfactory
        : SampleCvPercent <= SpreadingConstants.All["cv-poor"] ? UniformityVerdict.Marginal
        : UniformityVerdict.Poor;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Pattern.IsMeasured && !PatternMath.FallsOnTrays(Pattern, SwathFeet, Driving)
                ?
                [
                    FindingCatalog.Create(SpreadingCodes.FieldWorse),
                    FindingCatalog.Create(SpreadingCodes.BetweenTrays, ("swath", Print(SwathFeet))),
                ]
                : [FindingCatalog.Create(SpreadingCodes.FieldWorse)]
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. SpreadingFormulas
                .All.SourcesOf("spread-overlapped-cv")
                .Concat(SpreadingConstants.All.Find("cv-workable").Origin.Sources)
                .Concat(SpreadingConstants.All.Find("cv-poor").Origin.Sources)
                .Concat(Findings.Select(f => f.Source))
                .Distinct(),
        ];

    /// <summary>Overlaps a pattern with itself.</summary>
    /// <param name="pattern">Single pass.</param>
    /// <param name="swath">Spacing of the passes; from 0.1 to 10,000 ft, and no less than a five-hundredth of the reach.</param>
    /// <param name="driving">How passes follow each other.</param>
    /// <returns>The overlapped pattern with both coefficients of variation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static OverlappedPattern For(SpreadPattern pattern, Length swath, DrivingMethod driving)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        Guard.Defined(driving);
        double feet = PatternMath.SwathFeet(pattern, swath);
        var (first, step, count) = PatternMath.Positions(pattern, feet, driving);
        var amounts = new double[count];
        for (int i = 0; i < count; i++)
        {
            amounts[i] = PatternMath.Overlapped(pattern, first + (i * step), feet, driving);
        }

        var (mean, population, sample) = PatternMath.Evenness(amounts);
        return new OverlappedPattern
        {
            Pattern = pattern,
            Swath = swath,
            SwathFeet = feet,
            Driving = driving,
            Amounts = ImmutableCollectionsMarshal.AsImmutableArray(amounts),
            FirstPosition = Length.FromFeet(first),
            Step = Length.FromFeet(step),
            Mean = mean,
            PopulationCvPercent = population * 100,
            SampleCvPercent = sample * 100,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. ThinnestLines(),
            SpreadingFormulas
                .All["spread-overlapped-mean"]
                .Line(Print(Mean), ("sum of overlapped amounts", Print(Amounts.Sum())), ("positions", Print(Amounts.Length))),
            Cv(PopulationCvPercent, CvConvention.Population),
            Cv(SampleCvPercent, CvConvention.Sample),
        ];

    private double SwathFeet { get; init; }

    /// <summary>What each pass lays on the thinnest place, while they are few enough to follow.</summary>
    private IEnumerable<WorkedLine> ThinnestLines()
    {
        double first = FirstPosition.Feet;
        double step = Step.Feet;
        double place = first + (Amounts.IndexOf(Amounts.Min()) * step);
        var (from, to) = PatternMath.PassesOver(Pattern, place, SwathFeet);
        for (int pass = from; pass <= to && to - from < MostPassesShown; pass++)
        {
            int side = PatternMath.SideOf(pass, Driving);
            double feet = PatternMath.FeetFromPath(place, pass, SwathFeet, side);
            yield return SpreadingFormulas
                .All["spread-place-from-path"]
                .Line(
                    $"{Print(feet)} ft, which gets {Print(Pattern.AmountAt(feet))}",
                    ("pass", Print(pass)),
                    ("side", Print(side)),
                    ("place", Print(place)),
                    ("swath", Print(SwathFeet))
                );
        }
    }

    internal double DeviationAt(double cvPercent) => cvPercent / 100 * Mean;

    private WorkedLine Cv(double percent, CvConvention convention) =>
        SpreadingFormulas
            .All["spread-overlapped-cv"]
            .Line(
                $"{Print(percent)} %",
                ("convention", SpreadingWords.CvConventions[convention]),
                ("standard deviation", PlotAgronomy.Amounts.Print(DeviationAt(percent), 3)),
                ("mean", PlotAgronomy.Amounts.Print(Mean, 3))
            );

    private static string Print(double number) => PlotAgronomy.Amounts.Print(number, 2);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
