using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One pass over the plot: the kinds that share the hopper, the load, and how to set the spreader for it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SowingPass
{
    private readonly Length spacing;

    /// <param name="spacing">Spacing of the passes; the swath where none are laid.</param>
    internal SowingPass(Length spacing) => this.spacing = spacing;

    /// <summary>Gets the length of the test run that <see cref="TestRunCatch"/> is weighed over.</summary>
    public static Length TestRun => MeasuredRate.UsualCourse;

    /// <summary>Gets the number of the pass, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Gets the sizes of its seed.</summary>
    public required SeedPass Group { get; init; }

    /// <summary>Gets the kinds that share the hopper.</summary>
    public required ImmutableArray<SownKind> Kinds { get; init; }

    /// <summary>Gets the bulk rate of all kinds together.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the bulk seed of all kinds together.</summary>
    public required Mass Load { get; init; }

    /// <summary>Gets the walk that covers the area once.</summary>
    public required SowingWalk Walk { get; init; }

    /// <summary>Gets the passes laid over the outline; open when only the area is known.</summary>
    public required Answer<FieldPasses> Laid { get; init; }

    /// <summary>Gets how to set the spreader by the runs that were weighed.</summary>
    public required SpreaderSetup Setup { get; init; }

    /// <summary>Gets the measured run that comes closest, or null when none of the pass's kinds was run.</summary>
    public SpreaderRun? Run => Setup.Taken?.Run;

    /// <summary>Gets what that run spread; null without one.</summary>
    public MeasuredRate? Measured => Setup.Taken?.Rate;

    /// <summary>Gets the walking speed that gives the rate at the gate of the measured run; open without a timed run of one of
    /// its kinds.</summary>
    public Answer<SpreaderSetting> Setting => SpreadingParts.Setting(Setup, Names);

    /// <summary>Gets what a run over <see cref="TestRun"/> must use.</summary>
    public Mass TestRunCatch => MeasuredRate.ExpectedCatch(Rate, TestRun, spacing);

    /// <summary>Gets the sum behind <see cref="TestRunCatch"/>.</summary>
    public WorkedLine TestRunLine => MeasuredRate.ExpectedCatchLine(Rate, TestRun, spacing);

    /// <summary>What a test run leaves of a small load.</summary>
    internal ImmutableArray<Finding> TestRunFindings => [.. TestRunFinding.For(Load, TestRun, TestRunCatch)];

    /// <summary>Gets the sum behind <see cref="Load"/>.</summary>
    public WorkedLine LoadLine =>
        BlendFormulas.Sum(
            "Load",
            $"{string.Join(" + ", Kinds.Select(k => Amounts.Print(k.Weight.ToMass(), "lb", 2)))} = {Amounts.Print(Load, "lb", 2)}"
        );

    /// <summary>Gets the sum behind <see cref="Rate"/>.</summary>
    public WorkedLine RateLine =>
        BlendFormulas.Sum(
            "Rate",
            $"{string.Join(" + ", Kinds.Select(k => Amounts.Print(k.Rate.PoundsPerAcre, 2)))} = "
                + $"{Amounts.Print(Rate.PoundsPerAcre, 2)} lb/ac"
        );

    /// <summary>The depth that suits all kinds with a known one; null where none is known.</summary>
    internal (Length Shallowest, Length Deepest)? Depth
    {
        get
        {
            var depths = Kinds.Select(k => k.Planned.Kind.Depth).OfType<PlantingDepth>().ToList();
            return depths.Count == 0
                ? null
                : (depths.MaxBy(d => d.Shallowest.Inches)!.Shallowest, depths.MinBy(d => d.Deepest.Inches)!.Deepest);
        }
    }

    /// <summary>How light its seed may lie, each kind by itself; null where a kind's bushel weight is not known.</summary>
    internal Density? LightestBulk
    {
        get
        {
            double pounds = 0,
                cubicFeet = 0;
            foreach (var kind in Kinds)
            {
                if (kind.Planned.Kind.BushelWeight is not { } weight)
                {
                    return null;
                }

                double perCubicFoot = weight.Low.PoundsPerCubicFoot;
                pounds += kind.Weight.Pounds;
                cubicFeet += kind.Weight.Pounds / perCubicFoot;
            }

            return Density.FromPoundsPerCubicFoot(pounds / cubicFeet);
        }
    }

    internal string Names => string.Join(", ", Kinds.Select(k => k.Planned.Kind.ShortName));

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"pass {Amounts.Print(Number, 0)}: {Names}, {Amounts.Print(Load, "lb", 2)}";
}
