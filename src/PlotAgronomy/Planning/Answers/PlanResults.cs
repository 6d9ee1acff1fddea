using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Planning;

/// <summary>Everything the rooms answered about one plan; the sections of the sheet only print it.</summary>
internal sealed class PlanResults
{
    internal required PlanContent Plan { get; init; }

    internal ImmutableArray<Finding> ReportFindings => SoilPlausibility.Check(Plan.Report, Plan.PlantingDate);

    internal required PlotNeed Need { get; init; }

    internal required LimeAnswer Lime { get; init; }

    internal Purchase? Fertilizer { get; init; }

    /// <summary>Runner-ups that really differ, with what they are.</summary>
    internal ImmutableArray<(RunnerUp Is, Purchase Plan)> FertilizerAlternatives { get; init; } = [];

    internal required Blend Blend { get; init; }

    internal required BlendBatch Batch { get; init; }

    internal required CrowdingReport Crowding { get; init; }

    internal required ImmutableArray<SownKind> Sown { get; init; }

    internal required SizeGrouping Groups { get; init; }

    internal required ImmutableArray<SowingPass> Passes { get; init; }
}
