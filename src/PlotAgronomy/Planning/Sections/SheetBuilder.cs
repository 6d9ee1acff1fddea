using System.Collections.Immutable;

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
        return Close($"{plan.PlotName}: planting of {SheetText.Date(plan.PlantingDate)}", work, findings);
    }

    /// <summary>Ends a sheet with its findings and the sources of its numbers.</summary>
    /// <param name="title">Title.</param>
    /// <param name="sections">The work.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="told">Those that the sections tell in their place already.</param>
    internal static FieldSheet Close(
        string title,
        ImmutableArray<SheetSection> sections,
        ImmutableArray<Finding> findings,
        IEnumerable<Finding>? told = null
    )
    {
        var sources = SourcesOf(sections, findings);
        var elsewhere = told?.ToList() ?? [];
        return new FieldSheet
        {
            Title = title,
            Sections =
            [
                .. sections,
                FindingsSection.Write([.. findings.Except(elsewhere)], elsewhere.Count > 0),
                SourcesSection.Write(sources),
            ],
            Findings = findings,
            Sources = sources,
        };
    }

    private static ImmutableArray<Source> SourcesOf(ImmutableArray<SheetSection> sections, ImmutableArray<Finding> findings) =>
        [
            .. new FieldSheet
            {
                Title = "",
                Sections = sections,
                Findings = findings,
                Sources = [],
            }
                .Figures.SelectMany(f => f.Sources)
                .Concat(findings.Select(f => f.Source))
                .Distinct()
                .OrderBy(s => s.Id, StringComparer.Ordinal),
        ];
}
