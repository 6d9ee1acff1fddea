using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One pass over the plot: the kinds that share the hopper, the load, and how to set the spreader for it.</summary>
internal sealed class SowingPass
{
    internal required int Number { get; init; }

    internal required SeedPass Group { get; init; }

    internal required ImmutableArray<SownKind> Kinds { get; init; }

    internal required ApplicationRate Rate { get; init; }

    internal required Mass Load { get; init; }

    internal required SowingWalk Walk { get; init; }

    /// <summary>Passes laid over the outline; null when only the area is known.</summary>
    internal FieldPasses? Layout { get; init; }

    /// <summary>How to set the spreader by the runs that were weighed.</summary>
    internal required SpreaderSetup Setup { get; init; }

    /// <summary>The measured run that comes closest, or null when none of the pass's kinds was run.</summary>
    internal SpreaderRun? Run => Setup.Taken?.Run;

    internal MeasuredRate? Measured => Setup.Taken?.Rate;

    /// <summary>The walking speed that gives the rate at the gate of the measured run.</summary>
    internal SpreaderSetting? Setting => Setup.PaceForGate;

    internal string Names => string.Join(", ", Kinds.Select(k => SheetText.Name(k.Planned.Kind)));

    internal WorkedLine LoadLine =>
        BlendFormulas.Sum(
            "Load",
            $"{string.Join(" + ", Kinds.Select(k => Amounts.Print(k.Weight.ToMass(), "lb", 2)))} = {Amounts.Print(Load, "lb", 2)}"
        );

    internal WorkedLine RateLine =>
        BlendFormulas.Sum(
            "Rate",
            $"{string.Join(" + ", Kinds.Select(k => Amounts.Print(k.Bulk.Bulk.PoundsPerAcre, 2)))} = "
                + $"{Amounts.Print(Rate.PoundsPerAcre, 2)} lb/ac"
        );
}
