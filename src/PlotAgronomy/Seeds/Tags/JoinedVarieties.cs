namespace PlotAgronomy.Seeds;

/// <summary>Several varieties of one kind in a bag, counted as one lot: a tag names each with its own test.</summary>
internal static class JoinedVarieties
{
    /// <summary>One component of several of one kind; the only one as it is.</summary>
    /// <remarks>Pure seed is their sum; germination, hard and dormant seed are parts of the pure seed, so each counts by its
    /// weight. The month of test is the oldest.</remarks>
    internal static TagComponent Of(IReadOnlyList<TagComponent> ofOneKind)
    {
        if (ofOneKind.Count == 1)
        {
            return ofOneKind[0];
        }

        double pure = ofOneKind.Sum(c => c.Analysis.PureSeed.Value);
        Fraction OfPure(Func<SeedAnalysis, Fraction> part) =>
            Fraction.FromValue(ofOneKind.Sum(c => c.Analysis.PureSeed.Value * part(c.Analysis).Value) / pure);
        string[] origins = [.. ofOneKind.Select(c => c.Origin).OfType<string>().Distinct()];
        var months = ofOneKind.Select(c => c.TestMonth).OfType<TestMonth>().Order().ToArray();
        return new()
        {
            Kind = ofOneKind[0].Kind,
            Analysis = SeedAnalysis.FromFractions(
                Fraction.FromValue(Math.Min(1, pure)),
                OfPure(a => a.Germination),
                OfPure(a => a.HardSeed),
                OfPure(a => a.DormantSeed),
                ofOneKind.Max(c => c.Analysis.Coating.Value) is var coating ? Fraction.FromValue(coating) : default
            ),
            Variety = string.Join("; ", ofOneKind.Select(c => c.Variety).OfType<string>()) is { Length: > 0 } names
                ? names
                : null,
            Origin = origins.Length == 1 ? origins[0] : null,
            TestMonth = months.Length > 0 ? months[0] : null,
        };
    }
}
