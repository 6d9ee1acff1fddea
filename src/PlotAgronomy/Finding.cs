using System.Collections.Immutable;

namespace PlotAgronomy;

/// <summary>A remark carried on a result to the final sheet. Its code is stable and never renamed.</summary>
public sealed class Finding
{
    internal static readonly EnumWords<FindingSeverity> SeverityWords = EnumWords<FindingSeverity>.FromNames();

    /// <summary>Gets the stable code, such as <c>lime-over-target</c>.</summary>
    public required string Code { get; init; }

    /// <summary>Gets how serious it is.</summary>
    public required FindingSeverity Severity { get; init; }

    /// <summary>Gets the remark in English, with the numbers it is about.</summary>
    public required string Text { get; init; }

    /// <summary>Gets the id of the source of the caution.</summary>
    public required string SourceId { get; init; }

    /// <summary>Orders findings, most serious first, keeping the given order within a severity.</summary>
    /// <param name="findings">Findings in any order.</param>
    /// <returns>The ordered findings, each code and text once.</returns>
    public static ImmutableArray<Finding> InOrder(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        return [.. findings.DistinctBy(f => (f.Code, f.Text)).OrderByDescending(f => f.Severity)];
    }

    /// <summary>Text such as <c>caution lime-over-target: ...</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{SeverityWords[Severity]} {Code}: {Text}";
}
