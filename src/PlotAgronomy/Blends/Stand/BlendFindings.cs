using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>What is worth saying of a blend by itself.</summary>
internal static class BlendFindings
{
    internal static IEnumerable<Finding> Of(ImmutableArray<BlendPart> parts)
    {
        if (parts.Where(p => !p.Component.HasTag).Select(p => p.Kind).ToArray() is { Length: > 0 } untagged)
        {
            yield return FindingCatalog.Create(BlendCodes.LotUnknown, ("kinds", StandNames.Of(untagged)));
        }

        if (parts.Any(p => p.Component.Method != parts[0].Component.Method))
        {
            yield return FindingCatalog.Create(BlendCodes.MethodsDiffer);
        }

        if (parts.Any(p => p.Component.Method == SowingMethod.Drilled))
        {
            yield return FindingCatalog.Create(BlendCodes.DrilledRates);
        }

        foreach (var part in parts)
        {
            double full = part.Component.FullRate.PoundsPerAcre;
            if (full < part.Component.FullRange.Low.PoundsPerAcre || full > part.Component.FullRange.High.PoundsPerAcre)
            {
                yield return FindingCatalog.Create(
                    BlendCodes.OwnFullRate,
                    ("kind", part.Kind.ShortName),
                    ("rate", part.Component.FullRate.ToString()),
                    ("range", part.Component.FullRange.ToString())
                );
            }
        }

        var remembered = MemoryNotes
            .For("the full rates", parts.Select(p => (p.Kind, p.Kind.Rates?.EvidenceFor(p.Component.Method))))
            .Concat(MemoryNotes.For("the seed counts", parts.Select(p => (p.Kind, p.Kind.SeedCount?.Evidence))));
        foreach (var note in remembered)
        {
            yield return note;
        }
    }
}
