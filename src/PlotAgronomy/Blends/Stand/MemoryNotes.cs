using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>One remark for all figures of a blend that rest on memory, instead of one for each kind.</summary>
internal static class MemoryNotes
{
    /// <summary>The remark; none when every figure was read or is the user's own.</summary>
    /// <param name="figures">Such as <c>the full rates</c>.</param>
    /// <param name="kinds">Kinds of the blend, each with where its figure comes from; null when it has none.</param>
    internal static IEnumerable<Finding> For(string figures, IEnumerable<(CropKind Kind, Origin? Evidence)> kinds)
    {
        var remembered = kinds.Where(k => k.Evidence?.Status == DataStatus.Memory).DistinctBy(k => k.Kind.Id).ToArray();
        return remembered.Length == 0
            ? []
            :
            [
                MemoryGate.FindingFor(
                    $"{figures} of {StandNames.Of(remembered.Select(k => k.Kind))}",
                    remembered.SelectMany(k => k.Evidence!.Sources).Distinct()
                ),
            ];
    }
}
