namespace PlotAgronomy.Reference;

/// <summary>What a room's table holds of one finding: its code, and its text with places for the values.</summary>
/// <remarks>The subject is the name of the place that tells what the finding is about; null where it is the whole.</remarks>
internal sealed record FindingTemplate(
    string Code,
    FindingSeverity Severity,
    TextWithPlaces Text,
    string? Subject,
    Source Source
);
