using System.Globalization;
using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <summary>A kind and the share of a full stand it takes: its rate divided by its full rate alone, sown the same way.</summary>
/// <example>
/// <code>
/// var oats = KindCatalog.Standard.Find("spring oats");
/// Console.WriteLine(KindShare.FromShare(oats, 0.5));
/// // 0.5 of a full stand of Spring oats
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class KindShare
{
    private KindShare(CropKind kind, double shareOfFullStand)
    {
        Kind = kind;
        ShareOfFullStand = shareOfFullStand;
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the share as a pure number, at least 0; it may exceed 1.</summary>
    public double ShareOfFullStand { get; }

    /// <summary>Names a kind and its share.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="shareOfFullStand">Share of a full stand; finite, at least 0.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static KindShare FromShare(CropKind kind, double shareOfFullStand)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(kind, Guard.AtLeast(shareOfFullStand, 0, "of a full stand"));
    }

    /// <summary>The share that a rate makes, against the published full rate for the same way of sowing.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="rate">Rate sown.</param>
    /// <returns>The share.</returns>
    /// <exception cref="InvalidOperationException">No full rate is published for this way of sowing.</exception>
    /// <remarks>share = rate / full rate (SEED-S88).</remarks>
    public static KindShare FromRate(CropKind kind, PureLiveSeedRate rate)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(kind, rate / kind.FullRange(rate.Method).Full);
    }

    /// <summary>Text such as <c>0.25 of a full stand of Alsike clover</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{ShareOfFullStand:0.###} of a full stand of {Kind.ShortName}");
}
