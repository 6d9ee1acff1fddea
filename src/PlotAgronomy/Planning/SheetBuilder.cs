using System.Collections.Immutable;
using PlotAgronomy.Planning.Sections;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Builds the field sheet of a plan.</summary>
public static class SheetBuilder
{
    /// <summary>Builds the sheet.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>The sheet.</returns>
    public static FieldSheet Build(PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var results = PlanSolver.Solve(plan.Content);
        var findings = Finding.InOrder(PlanFindings.Of(results));
        ImmutableArray<SheetSection> work =
        [
            ReportSection.Write(results),
            LimeSection.Write(results),
            FertilizerSection.Write(results),
            SeedSection.Write(results),
            WorkOrderSection.Write(results),
            PassSection.Write(results),
            ShoppingSection.Write(results),
        ];
        var sources = SourcesOf(work, findings);
        return new FieldSheet
        {
            Title = $"{plan.PlotName}: planting of {SheetText.Date(plan.PlantingDate)}",
            Sections = [.. work, FindingsSection.Write(findings), SourcesSection.Write(sources)],
            Findings = findings,
            Sources = sources,
        };
    }

    private static ImmutableArray<Source> SourcesOf(ImmutableArray<SheetSection> sections, ImmutableArray<Finding> findings) =>
        [.. new FieldSheet { Title = "", Sections = sections, Findings = findings, Sources = [] }.Figures
            .SelectMany(f => f.SourceIds).Concat(findings.Select(f => f.SourceId)).Distinct()
            .Select(SourceCatalog.Find).OrderBy(s => s.Id, StringComparer.Ordinal)];
}
