using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Whether a retest still agrees with the germination on the label, by the federal tolerance.</summary>
/// <remarks>The tolerance is looked up at the mean of label and retest (7 CFR 201.63, SEED-S16); that it is this mean rests on
/// memory. It also holds for germination + hard seed.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class GerminationTolerance : IWorkedResult
{
    /// <summary>The steps from the highest mean down.</summary>
    private static readonly Lazy<ImmutableArray<Step>> Steps = new(() =>
        [.. new Table<Step>("Seeds/Data/germination-tolerances.csv", Step.FromRow).Rows.OrderByDescending(s => s.MeanFromPercent)]
    );

    private readonly Fraction label;
    private readonly Fraction retest;
    private readonly Step step;

    private GerminationTolerance(Fraction label, Fraction retest, Step step, double tolerancePoints)
    {
        this.label = label;
        this.retest = retest;
        this.step = step;
        TolerancePoints = tolerancePoints;
    }

    /// <summary>Gets the mean of label and retest in percent.</summary>
    public double MeanPercent => SeedMath.MeanOfTests(label.Percent, retest.Percent);

    /// <summary>Gets the difference of label and retest in points of percent.</summary>
    public double DifferencePoints => SeedMath.DifferenceOfTests(label.Percent, retest.Percent);

    /// <summary>Gets the tolerance in points of percent.</summary>
    public double TolerancePoints { get; }

    /// <summary>Gets a value indicating whether the difference is within the tolerance; equal is within.</summary>
    public bool IsWithin => !Tolerance.IsAbove(DifferencePoints, TolerancePoints);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var memory = MemoryGate.FindingFor("the mean at which the germination tolerance is looked up", Mean.Origin!);
            return IsWithin
                ? [memory]
                : Finding.InOrder([
                    FindingCatalog.Create(
                        SeedCodes.OutOfTolerance,
                        ("label", Amounts.Print(label, 1)),
                        ("retest", Amounts.Print(retest, 1)),
                        ("tolerance", Amounts.Print(TolerancePoints, 0))
                    ),
                    memory,
                ]);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => step.Origin.Sources;

    /// <summary>The row that prints the tolerance.</summary>
    internal Origin Origin => step.Origin;

    private static Formula Mean => SeedFormulas.All["tolerance-mean"];

    /// <summary>Compares a label with a retest.</summary>
    /// <param name="label">Germination on the label.</param>
    /// <param name="retest">Germination found.</param>
    /// <param name="mixtureComponentOf200Seeds">Whether only 200 seeds of a mixture's component were tested, which the rules
    /// allow for kinds at 15 % or less of it (7 CFR 201.54, SEED-S20): two points more.</param>
    /// <returns>The comparison.</returns>
    public static GerminationTolerance Compare(Fraction label, Fraction retest, bool mixtureComponentOf200Seeds = false)
    {
        var step = StepAt(SeedMath.MeanOfTests(label.Percent, retest.Percent));
        return new(label, retest, step, mixtureComponentOf200Seeds ? step.MixturePoints : step.Points);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        string verdict = IsWithin ? "within" : "out";
        string tolerance = Amounts.Print(TolerancePoints, 0);
        (string, string)[] tests = [("label", Amounts.Print(label, 1)), ("retest", Amounts.Print(retest, 1))];
        return
        [
            Mean.Line($"{Amounts.Print(MeanPercent, 1)} %", tests),
            SeedFormulas
                .All["tolerance-difference"]
                .Line($"{Amounts.Print(DifferencePoints, 1)} points against a tolerance of {tolerance}: {verdict}", tests),
        ];
    }

    /// <summary>The highest step at or below a mean; the lowest begins at 0.</summary>
    private static Step StepAt(double meanPercent)
    {
        var steps = Steps.Value;
        int at = 0;
        while (meanPercent < steps[at].MeanFromPercent)
        {
            at++;
        }

        return steps[at];
    }

    private sealed record Step(double MeanFromPercent, double Points, double MixturePoints, Origin Origin)
    {
        internal static Step FromRow(CsvRow row) =>
            new(
                row.Number("mean_from_pct"),
                row.Number("tolerance_of_400_seeds_points"),
                row.Number("tolerance_of_200_seeds_in_mixture_points"),
                row.Origin()
            );
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
