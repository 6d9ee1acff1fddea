using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>A seeding rate counted as bulk seed, with the way it is sown.</summary>
/// <remarks>Held in lb/ac. The default is zero, drilled. Equality is exact. Bulk seed is what comes out of the bag: coating,
/// inert matter, weeds and dead seed included.</remarks>
[JsonConverter(typeof(JsonTextConverter<BulkSeedRate>))]
public readonly record struct BulkSeedRate : IJsonText<BulkSeedRate>
{
    private readonly SownRate sown;

    private BulkSeedRate(SownRate sown) => this.sown = sown;

    /// <summary>Gets the bulk seed sown per area.</summary>
    public ApplicationRate Rate => sown.Rate;

    /// <summary>Gets how it is sown. A rate means nothing without it.</summary>
    public SowingMethod Method => sown.Method;

    /// <summary>Gets the rate in lb of bulk seed per acre.</summary>
    public double PoundsPerAcre => Rate.PoundsPerAcre;

    /// <summary>Names a rate and how it is sown.</summary>
    /// <param name="rate">Amount of bulk seed per area.</param>
    /// <param name="method">How it is sown.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public static BulkSeedRate FromRate(ApplicationRate rate, SowingMethod method) => new(SownRate.Of(rate, method));

    /// <summary>A drilled rate.</summary>
    /// <param name="poundsPerAcre">lb of bulk seed per acre; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static BulkSeedRate DrilledPoundsPerAcre(double poundsPerAcre) =>
        new(SownRate.OfPounds(poundsPerAcre, SowingMethod.Drilled));

    /// <summary>A broadcast rate.</summary>
    /// <param name="poundsPerAcre">lb of bulk seed per acre; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    internal static BulkSeedRate BroadcastPoundsPerAcre(double poundsPerAcre) =>
        new(SownRate.OfPounds(poundsPerAcre, SowingMethod.Broadcast));

    /// <summary>The bulk seed that sows an area at this rate.</summary>
    /// <param name="area">Area sown; finite, at least 0.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public BulkSeedMass Over(Area area) => BulkSeedMass.FromMass(Rate.Over(area));

    /// <summary>Text such as <c>12 lb bulk/ac, broadcast</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => sown.InWords("lb bulk");

    static string IJsonText<BulkSeedRate>.ToJsonText(BulkSeedRate value) => value.sown.ToJsonText("lb bulk");

    static BulkSeedRate IJsonText<BulkSeedRate>.FromJsonText(string text) => new(SownRate.FromJsonText(text, "lb bulk"));
}
