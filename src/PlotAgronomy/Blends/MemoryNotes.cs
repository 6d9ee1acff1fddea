using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>One remark for all figures of a blend that rest on memory, instead of one for each kind.</summary>
internal static class MemoryNotes
{
    /// <summary>The remark, or null when every figure was read or is the user's own.</summary>
    /// <param name="figures">Such as <c>the full rates</c>.</param>
    /// <param name="kinds">Kinds of the blend.</param>
    /// <param name="evidenceOf">Where the figure of a kind comes from; null when it has none.</param>
    internal static Finding? For(string figures, IEnumerable<CropKind> kinds, Func<CropKind, KindEvidence?> evidenceOf)
    {
        var remembered = kinds.DistinctBy(k => k.Id).Where(k => evidenceOf(k)?.Status == DataStatus.Memory).ToArray();
        return remembered.Length == 0 ? null : MemoryGate.FindingFor(
            $"{figures} of {FitFindings.Names(remembered)}",
            string.Join(", ", remembered.SelectMany(k => evidenceOf(k)!.SourceIds).Distinct()));
    }
}
