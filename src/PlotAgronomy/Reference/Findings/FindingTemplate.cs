namespace PlotAgronomy.Reference;

/// <summary>What a room's table holds of one finding.</summary>
internal sealed record FindingTemplate(string Code, FindingSeverity Severity, TextWithPlaces Text, string? Subject, Source Source)
    : CodedText(Code, Text, Subject, Source);
