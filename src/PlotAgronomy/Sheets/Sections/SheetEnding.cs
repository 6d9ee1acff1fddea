using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>How every sheet ends.</summary>
internal static class SheetEnding
{
    /// <summary>Ends a sheet with its findings and the sources of its numbers.</summary>
    /// <param name="title">Title.</param>
    /// <param name="sections">The work.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="told">Those that the sections tell in their place already.</param>
    /// <param name="more">Sources of what is no figure, such as the intervals of a season.</param>
    internal static FieldSheet Close(
        string title,
        ImmutableArray<SheetSection> sections,
        ImmutableArray<Finding> findings,
        IEnumerable<Finding>? told = null,
        IEnumerable<Source>? more = null
    )
    {
        var sources = SourcesOf(sections, findings, more ?? []);
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

    internal static ImmutableArray<Source> SourcesOf(
        ImmutableArray<SheetSection> sections,
        ImmutableArray<Finding> findings,
        IEnumerable<Source> more
    ) =>
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
                .Concat(more)
                .Distinct()
                .OrderBy(s => s.Id, StringComparer.Ordinal),
        ];
}
