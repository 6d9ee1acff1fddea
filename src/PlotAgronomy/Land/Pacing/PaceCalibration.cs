using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <summary>A person's step length, found by walking a course of known length.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PaceCalibration : IWorkedResult
{
    private readonly double courseFeet;
    private readonly double stepFeet;

    private PaceCalibration(double courseFeet, ImmutableArray<StepCount> walks)
    {
        this.courseFeet = courseFeet;
        Walks = walks;
        double meanSteps = MeanOf(walks);
        stepFeet = LandMath.StepFeet(courseFeet, meanSteps);
        WalkScatter = walks.Length > 1 ? ScatterOf(walks, meanSteps) : LandConstants.All["practised-pace-error"];
        StepError = LandMath.StepError(WalkScatter, walks.Length);
    }

    /// <summary>A stated pace: the course is the one that the error of a practised walker is printed for.</summary>
    private PaceCalibration(double statedFeet)
    {
        courseFeet = LandConstants.All["practised-pace-course"];
        stepFeet = statedFeet;
        Walks = [];
        WalkScatter = StepError = LandConstants.All["practised-pace-error"];
    }

    /// <summary>Gets the length of the course; of a stated pace the one that its error is printed for.</summary>
    public Length Course => Length.FromFeet(courseFeet);

    /// <summary>Gets the counts of the walks; none where the pace was only stated.</summary>
    public ImmutableArray<StepCount> Walks { get; }

    /// <summary>Gets the length of a single step.</summary>
    public Length Step => Length.FromFeet(stepFeet);

    /// <summary>Gets the relative scatter of a single walk over the course (sample standard deviation); a pure number.</summary>
    public double WalkScatter { get; }

    /// <summary>Gets the relative standard error of the step: the scatter divided by the
    /// root of the number of walks; a pure number.</summary>
    public double StepError { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. StepFormula.Origin!.Sources.Union(LandConstants.All.Find("pace-agreement").Origin.Sources)];

    private static Formula StepFormula => LandFormulas.All["step-length"];

    /// <summary>Finds the step from walks over a course of known length.</summary>
    /// <param name="course">Taped length of the course; finite, above 0. At least 300 ft is advised.</param>
    /// <param name="walks">Count of each walk; at least one, each above 0.</param>
    /// <returns>The calibrated step.</returns>
    /// <exception cref="ArgumentException">No walk.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>step = course / mean count. One walk shows no scatter: 2 ft in 100 ft is taken (source SPREAD-S38).</remarks>
    public static PaceCalibration FromWalks(Length course, params IReadOnlyList<StepCount> walks)
    {
        double feet = course.Feet;
        Guard.Above(feet, 0, "ft", nameof(course));
        foreach (var walk in Guard.NotEmpty(walks))
        {
            Guard.Above(walk.SingleSteps, 0, "steps", nameof(walks));
        }

        return new PaceCalibration(feet, [.. walks]);
    }

    /// <summary>A pace that its owner states without having walked a course for it.</summary>
    /// <param name="step">Length of a single step; finite, above 0.</param>
    /// <returns>The pace, with the error that a practised walker keeps to.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    /// <remarks>Error taken: 2 ft in 100 ft (source SPREAD-S38).</remarks>
    public static PaceCalibration FromStep(Length step)
    {
        double feet = step.Feet;
        return new PaceCalibration(Guard.Above(feet, 0, "ft", nameof(step)));
    }

    /// <summary>Length of a paced line.</summary>
    /// <param name="count">Steps counted along it.</param>
    /// <returns>The length with its error: the step's error is shared by all lines paced
    /// with it, the walk's scatter is its own.</returns>
    /// <remarks>length = count x step. The scatter of a walk is taken to grow with the root of its length.</remarks>
    public MeasuredLength Measure(StepCount count)
    {
        double feet = LandMath.PacedFeet(count.SingleSteps, stepFeet);
        return MeasuredLength.FromPaces(
            feet,
            StepError,
            WalkScatter * Math.Sqrt(feet * courseFeet),
            (count.SingleSteps, stepFeet)
        );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Walks.IsEmpty
            ? [LandFormulas.All["step-as-stated"].Line(Amounts.Print(Step, decimals: 3))]
            :
            [
                StepFormula.Line(
                    Amounts.Print(Step, decimals: 3),
                    ("course", Amounts.Print(Course, decimals: 1)),
                    ("mean count", $"{Amounts.Print(courseFeet / stepFeet, 2)} steps")
                ),
                LandFormulas
                    .All["step-error"]
                    .Line(
                        $"{Amounts.Print(100 * StepError, 2)} %",
                        ("scatter of a walk", $"{Amounts.Print(100 * WalkScatter, 2)} %"),
                        ("walks", Amounts.Print(Walks.Length, 0))
                    ),
            ];

    private static double MeanOf(ImmutableArray<StepCount> walks)
    {
        double steps = 0;
        foreach (var walk in walks)
        {
            steps += walk.SingleSteps;
        }

        return steps / walks.Length;
    }

    private static double ScatterOf(ImmutableArray<StepCount> walks, double meanSteps)
    {
        double squares = 0;
        foreach (var walk in walks)
        {
            squares += (walk.SingleSteps - meanSteps) * (walk.SingleSteps - meanSteps);
        }

        return Math.Sqrt(squares / (walks.Length - 1)) / meanSteps;
    }

    private IEnumerable<Finding> Remarks()
    {
        if (stepFeet < LandConstants.All["step-low-feet"] || stepFeet > LandConstants.All["step-high-feet"])
        {
            yield return FindingCatalog.Create(
                LandCodes.PaceUnlikely,
                ("step", Amounts.Print(Length.FromFeet(stepFeet), decimals: 2))
            );
        }

        if (Walks.IsEmpty)
        {
            yield return FindingCatalog.Create(
                LandCodes.PaceStated,
                ("step", Amounts.Print(Step, decimals: 2)),
                ("percent", $"{Amounts.Print(100 * StepError, 1)} %"),
                ("course", Amounts.Print(Length.FromFeet(LandConstants.All["pace-course-feet"])))
            );
            yield break;
        }

        if (courseFeet < LandConstants.All["pace-course-feet"])
        {
            yield return FindingCatalog.Create(
                LandCodes.PaceCourseShort,
                ("course", Amounts.Print(Length.FromFeet(courseFeet), decimals: 1)),
                ("limit", Amounts.Print(Length.FromFeet(LandConstants.All["pace-course-feet"])))
            );
        }

        double meanSteps = MeanOf(Walks);
        double worst = Walks.Max(w => Math.Abs(w.SingleSteps - meanSteps)) / meanSteps;
        if (Walks.Length == 1)
        {
            yield return FindingCatalog.Create(LandCodes.PaceSingleWalk, ("percent", $"{Amounts.Print(100 * WalkScatter, 1)} %"));
        }
        else if (worst > LandConstants.All["pace-agreement"])
        {
            yield return FindingCatalog.Create(LandCodes.PaceDisagree, ("percent", $"{Amounts.Print(100 * worst, 1)} %"));
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
