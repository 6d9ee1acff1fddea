using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>What a room's table holds of one question.</summary>
/// <remarks>Plausible numbers stand in the row where they are the same for every subject.</remarks>
internal sealed record QuestionTemplate(
    string Code,
    WhomToAsk Whom,
    TextWithPlaces Text,
    string? Subject,
    Source Source,
    DataStatus Status,
    ImmutableArray<double> Plausible
) : CodedText(Code, Text, Subject, Source);
