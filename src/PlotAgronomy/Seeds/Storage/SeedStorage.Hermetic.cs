namespace PlotAgronomy.Seeds;

/// <content>Wettest that seed may be when it is sealed hermetically, wet basis (7 CFR 201.36c, SEED-S25).</content>
public static partial class SeedStorage
{
    private static readonly KindLimits Ceilings = new("Seeds/Data/hermetic-moisture.csv", "most_moisture_pct");

    /// <summary>The ceiling for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>Most moisture, wet basis.</returns>
    public static Fraction HermeticCeilingFor(CropKind kind) => Ceilings.For(kind);
}
