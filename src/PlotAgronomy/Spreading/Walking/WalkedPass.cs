using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>A pass as a person walks it with seed, lime or fertilizer: fillings, once over or in two halves crosswise, pace, and
/// a test run that the load can spare.</summary>
/// <remarks>Two halves crosswise are walked where the gate that was measured would make the pace a crawl: each half is half the
/// rate at twice the pace.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class WalkedPass : IWorkedResult
{
    internal WalkedPass() { }

    /// <summary>Gets all that is spread.</summary>
    public required Mass Load { get; init; }

    /// <summary>Gets the rate over the plot, both halves together.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the spacing of the passes.</summary>
    public required Length Spacing { get; init; }

    /// <summary>Gets a value indicating whether it is walked twice, crosswise, at half the rate.</summary>
    public required bool IsCrosswise { get; init; }

    /// <summary>Gets the fillings of the hopper, counted by the lightest the material may lie; null when hopper or material is
    /// not known.</summary>
    public int? Fillings { get; init; }

    /// <summary>Whether it is more fillings than one person carries: this spreader is not the tool for it.</summary>
    internal bool IsTooMany => Fillings > SpreadingConstants.All["many-fillings"];

    /// <summary>Gets the weight of one filling, all alike; null when their number is not known.</summary>
    public Mass? PerFilling => Fillings is { } count ? Mass.FromPounds(Load.Pounds / count) : null;

    /// <summary>Gets the weight of the package it comes in; null where it is not bought in packages.</summary>
    public Mass? PackageWeight { get; init; }

    /// <summary>Gets the walk that one package lasts, once over; null where it is not bought in packages.</summary>
    public Length? WalkPerPackage =>
        PackageWeight is { } bag ? MeasuredRate.CourseLengthFor(Rate.AreaCoveredBy(bag), Spacing) : null;

    /// <summary>Gets the load in whole packages and what is weighed of one more; null where it is not bought in
    /// packages.</summary>
    public (int Whole, Mass Weighed)? InPackages
    {
        get
        {
            if (PackageWeight is not { } bag)
            {
                return null;
            }

            double pounds = Load.Pounds,
                each = bag.Pounds;
            int whole = (int)Math.Floor(pounds / each + Tolerance.Dust);
            return (whole, Mass.FromPounds(Math.Max(0, pounds - whole * each)));
        }
    }

    /// <summary>Gets the time for 100 ft, each way; null without a timed run.</summary>
    public TimeSpan? TimePer100Feet { get; init; }

    /// <summary>Gets the length of a test run that the load can spare.</summary>
    public required Length TestRun { get; init; }

    /// <summary>Gets what the test run must use, each way.</summary>
    public Mass TestRunCatch => MeasuredRate.ExpectedCatch(RateEachWay, TestRun, Spacing);

    /// <summary>Gets the rate of one walk over the plot.</summary>
    public ApplicationRate RateEachWay => IsCrosswise ? Rate * 0.5 : Rate;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        IsTooMany && Fillings is { } count
            ?
            [
                FindingCatalog.Create(
                    SpreadingCodes.ManyFillings,
                    ("fillings", Amounts.Print(count, 0)),
                    ("load", Amounts.PrintForScale(Load))
                ),
            ]
        : IsTooLittle
            ?
            [
                FindingCatalog.Create(
                    SpreadingCodes.WithSand,
                    ("load", Amounts.PrintForScale(Load)),
                    ("catch", Amounts.PrintForScale(TestRunCatch)),
                    ("sand", Amounts.Print(SpreadingConstants.All["sand-to-carry"], 0) + " lb")
                ),
            ]
        : [];

    /// <summary>Whether no scale shows what a test run uses.</summary>
    private bool IsTooLittle => TestRunCatch.Ounces < SpreadingConstants.All["least-catch"];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <summary>Plans the walk.</summary>
    /// <param name="load">All that is spread; above 0.</param>
    /// <param name="rate">Rate; above 0.</param>
    /// <param name="spacing">Spacing of the passes; above 0.</param>
    /// <param name="setting">Pace that gives the rate at the gate of a weighed run; or null.</param>
    /// <param name="filling">What the hopper holds of it at least; or null.</param>
    /// <param name="package">Weight of the package it comes in; or null.</param>
    /// <returns>The pass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static WalkedPass For(
        Mass load,
        ApplicationRate rate,
        Length spacing,
        SpreaderSetting? setting = null,
        Mass? filling = null,
        Mass? package = null
    )
    {
        Guard.Positive(load);
        Guard.Above(rate.PoundsPerAcre, 0, "lb/ac", nameof(rate));
        Guard.Positive(spacing);
        bool isCrosswise = setting is not null && IsCrawl(setting.Speed);
        var course = MeasuredRate.UsualCourse;
        var time = setting?.TimePer100Feet;
        return new WalkedPass
        {
            Load = load,
            Rate = rate,
            Spacing = spacing,
            IsCrosswise = isCrosswise,
            Fillings = filling is { } held ? Math.Max(1, Package.RoundUp(load, held)) : null,
            PackageWeight = package,
            TimePer100Feet = isCrosswise ? time / 2 : time,
            TestRun = TestRunFinding.Spared(
                load,
                course,
                MeasuredRate.ExpectedCatch(isCrosswise ? rate * 0.5 : rate, course, spacing)
            ),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            MeasuredRate.ExpectedCatchLine(RateEachWay, TestRun, Spacing),
            .. WalkPerPackage is { } walk
                ?
                [
                    SpreadingFormulas
                        .All["spread-walk-distance"]
                        .Line(
                            Amounts.Print(walk, "ft", 0),
                            ("area", $"{Amounts.Print(walk.Feet * Spacing.Feet, 0)} ft2 of a package"),
                            ("swath", Amounts.Print(Spacing, "ft", 1))
                        ),
                ]
                : ImmutableArray<WorkedLine>.Empty,
        ];

    /// <summary>Twice so fast is still a walk.</summary>
    private static bool IsCrawl(Speed pace) => pace.MilesPerHour < SpreadingConstants.All["crawl"];

    /// <summary>What it comes to.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string halves = IsCrosswise ? " in two halves crosswise" : "";
        return $"{Amounts.PrintForScale(Load)}{halves}, {Amounts.Print(TestRun, "ft", 0)} use "
            + Amounts.PrintForScale(TestRunCatch);
    }
}
