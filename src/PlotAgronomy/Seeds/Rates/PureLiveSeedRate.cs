using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>A seeding rate counted as pure live seed, with the way it is sown.</summary>
/// <remarks>Held in lb/ac. The default is zero, drilled. Equality is exact. Broadcast or frost factors apply to a drilled rate
/// once.</remarks>
[JsonConverter(typeof(JsonTextConverter<PureLiveSeedRate>))]
public readonly record struct PureLiveSeedRate : IJsonText<PureLiveSeedRate>
{
    private readonly SownRate sown;

    private PureLiveSeedRate(SownRate sown) => this.sown = sown;

    /// <summary>Gets the pure live seed sown per area.</summary>
    public ApplicationRate Rate => sown.Rate;

    /// <summary>Gets how it is sown. A rate means nothing without it.</summary>
    public SowingMethod Method => sown.Method;

    /// <summary>Gets the rate in lb of pure live seed per acre.</summary>
    public double PoundsPerAcre => Rate.PoundsPerAcre;

    /// <summary>Names a rate and how it is sown.</summary>
    /// <param name="rate">Amount of pure live seed per area.</param>
    /// <param name="method">How it is sown.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public static PureLiveSeedRate FromRate(ApplicationRate rate, SowingMethod method) => new(SownRate.Of(rate, method));

    /// <summary>A drilled rate.</summary>
    /// <param name="poundsPerAcre">lb of pure live seed per acre; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static PureLiveSeedRate DrilledPoundsPerAcre(double poundsPerAcre) =>
        new(SownRate.OfPounds(poundsPerAcre, SowingMethod.Drilled));

    /// <summary>A broadcast rate.</summary>
    /// <param name="poundsPerAcre">lb of pure live seed per acre; finite, at least 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static PureLiveSeedRate BroadcastPoundsPerAcre(double poundsPerAcre) =>
        new(SownRate.OfPounds(poundsPerAcre, SowingMethod.Broadcast));

    /// <summary>The pure live seed that sows an area at this rate.</summary>
    /// <param name="area">Area sown; finite, at least 0.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public PureLiveSeedMass Over(Area area) => PureLiveSeedMass.FromMass(Rate.Over(area));

    /// <summary>A multiple of the rate, sown the same way.</summary>
    /// <param name="rate">Rate.</param>
    /// <param name="factor">Pure number; finite, at least 0.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite factor.</exception>
    public static PureLiveSeedRate operator *(PureLiveSeedRate rate, double factor) => new(rate.sown * factor);

    /// <summary>Ratio of two rates sown the same way.</summary>
    /// <param name="left">Numerator.</param>
    /// <param name="right">Denominator; above 0.</param>
    /// <returns>A pure number.</returns>
    /// <exception cref="ArgumentException">The rates are sown in different ways.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is zero.</exception>
    public static double operator /(PureLiveSeedRate left, PureLiveSeedRate right) => left.sown / right.sown;

    /// <summary>Text such as <c>12 lb PLS/ac, broadcast</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => sown.InWords("lb PLS");

    static string IJsonText<PureLiveSeedRate>.ToJsonText(PureLiveSeedRate value) => value.sown.ToJsonText("lb PLS");

    static PureLiveSeedRate IJsonText<PureLiveSeedRate>.FromJsonText(string text) => new(SownRate.FromJsonText(text, "lb PLS"));
}
