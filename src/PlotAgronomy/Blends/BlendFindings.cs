using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>What is worth saying of a blend by itself.</summary>
internal static class BlendFindings
{
    internal static IEnumerable<Finding> Of(Blend blend)
    {
        if (blend.Parts.Where(p => !p.Component.HasTag).Select(p => p.Kind.CommonName).ToArray() is { Length: > 0 } untagged)
        {
            yield return FindingCatalog.Create("blend-lot-unknown", ("kinds", string.Join("; ", untagged)));
        }

        if (blend.Parts.Select(p => p.Component.Method).Distinct().Count() > 1)
        {
            yield return FindingCatalog.Create("blend-methods-differ");
        }

        if (blend.Parts.Any(p => p.Component.Method == SowingMethod.Drilled))
        {
            yield return FindingCatalog.Create("blend-drilled-rates");
        }

        foreach (var part in blend.Parts)
        {
            double full = part.Component.FullRate.PoundsPerAcre;
            if (full < part.Component.FullRange.Low.PoundsPerAcre || full > part.Component.FullRange.High.PoundsPerAcre)
            {
                yield return FindingCatalog.Create("blend-own-full-rate", ("kind", part.Kind.CommonName), ("rate", part.Component.FullRate.ToString()), ("range", part.Component.FullRange.ToString()));
            }
        }

        var kinds = blend.Parts.Select(p => p.Kind).ToArray();
        if (MemoryNotes.For("the full rates", kinds, k => k.Rates?.Evidence) is { } rates)
        {
            yield return rates;
        }

        if (MemoryNotes.For("the seed counts", kinds, k => k.SeedCount?.Evidence) is { } counts)
        {
            yield return counts;
        }
    }
}
