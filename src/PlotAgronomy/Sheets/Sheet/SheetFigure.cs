using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>A number on the sheet, with a code under which it can be explained.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetFigure : SheetBlock
{
    /// <summary>Gets the code, such as <c>lime.rate</c>: words that name the thing, joined by dots. It stays the same whatever
    /// else the plan holds.</summary>
    public required string Code
    {
        get;
        init => field = Guard.NotNull(value, nameof(Code));
    }

    /// <summary>Gets what the number is.</summary>
    public required string Label
    {
        get;
        init => field = Guard.NotNull(value, nameof(Label));
    }

    /// <summary>Gets the number with its unit, rounded for reading.</summary>
    public required string Value
    {
        get;
        init => field = Guard.NotNull(value, nameof(Value));
    }

    /// <summary>Gets the number itself with its unit, not rounded; null where the figure says words.</summary>
    public SheetAmount? Amount { get; init; }

    /// <summary>Gets the results behind the number.</summary>
    public required ImmutableArray<IWorkedResult> Results
    {
        get;
        init => field = Guard.Listed(value, nameof(Results));
    }

    /// <summary>Gets lines of the sheet's own arithmetic after the results, such as rate times area.</summary>
    public ImmutableArray<WorkedLine> OwnLines
    {
        get;
        init => field = Guard.Listed(value, nameof(OwnLines));
    } = [];

    /// <summary>Gets results that these numbers rest on without repeating their working, such as the need behind an
    /// order.</summary>
    public ImmutableArray<IWorkedResult> RestsOn
    {
        get;
        init => field = Guard.Listed(value, nameof(RestsOn));
    } = [];

    /// <summary>Gets what among the numbers was not yet checked against its publication, in whole sentences.</summary>
    public ImmutableArray<string> Unchecked =>
        [
            .. Results
                .Concat(RestsOn)
                .SelectMany(r => r.Findings)
                .Where(f => f.Code == ReferenceCodes.FromMemory)
                .Select(f => f.Text)
                .Distinct(),
        ];

    /// <summary>Gets the sources, each once.</summary>
    public ImmutableArray<Source> Sources =>
        [.. Results.SelectMany(r => r.Sources).Concat(OwnLines.SelectMany(l => l.Origin?.Sources ?? [])).Distinct()];

    /// <summary>Gets how well its numbers are known: the weakest status among its results and what they rest on.</summary>
    public DataStatus Status =>
        !Unchecked.IsEmpty ? DataStatus.Memory
        : RestsOnPracticeAlone ? DataStatus.Practice
        : ShowWork().Any(l => l.Origin?.Status == DataStatus.Secondary) ? DataStatus.Secondary
        : DataStatus.Read;

    private bool RestsOnPracticeAlone
    {
        get
        {
            var kinds = Sources.Select(s => s.Kind).ToList();
            return kinds.Contains(SourceKind.Practice) && !kinds.Contains(SourceKind.Publication);
        }
    }

    /// <summary>Lays out the lines of the sum.</summary>
    /// <returns>The lines, in order.</returns>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Results.SelectMany(r => r.ShowWork()).Concat(OwnLines).Distinct()];

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Label}: {Value}";
}
