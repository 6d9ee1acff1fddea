namespace PlotAgronomy.Reference;

/// <summary>The codes of this room's findings, as its table holds them.</summary>
internal static class ReferenceCodes
{
    internal const string FromMemory = "data-from-memory";
}
