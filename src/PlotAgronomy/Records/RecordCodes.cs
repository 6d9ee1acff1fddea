namespace PlotAgronomy.Records;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class RecordCodes
{
    internal const string CorrectedTwice = "record-corrected-twice";
    internal const string CorrectsNothing = "record-corrects-nothing";
    internal const string IdTwice = "record-id-twice";
    internal const string LineSetAside = "record-line-set-aside";
    internal const string TornLine = "record-torn-line";
}
