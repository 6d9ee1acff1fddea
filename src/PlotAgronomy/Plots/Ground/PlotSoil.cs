using System.Runtime.CompilerServices;
using PlotAgronomy.Plots;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>The soil of a plot: what a laboratory printed, joined with what eyes saw. What nobody states is null.</summary>
/// <remarks>
/// <para>Where both state a fact, the laboratory wins; <c>soil with { Texture = SoilTexture.Loam }</c> says otherwise, and
/// <see cref="TextureBy"/> tells who won. A report alone is a soil too: wherever a soil is asked for, a report will do.</para>
/// <para>A soil is only equal to itself.</para>
/// </remarks>
/// <example>
/// <code>
/// var report = new SoilReport { Laboratory = "state", WaterPh = WaterPh.FromValue(5.6) };
/// var plot = new Plot
/// {
///     Name = "Fern Bottom",
///     Measured = PlotArea.FromRectangle(Length.FromFeet(182), Length.FromFeet(140)),
///     Texture = SoilTexture.SandyLoam,
/// };
/// Console.WriteLine(PlotSoil.For(report, plot).Texture);
/// // SandyLoam
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record PlotSoil
{
    private PlotSoil(SoilReport report)
    {
        Report = report;
        SoilClass = report.SoilClass;
        Texture = report.Texture;
        ExchangeCapacity = report.PrintedExchangeCapacity;
        WaterPh = report.WaterPh;
    }

    /// <summary>Gets the laboratory's report as printed.</summary>
    public SoilReport Report { get; private init; }

    /// <summary>Gets the soil class.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown class.</exception>
    public SoilClass? SoilClass
    {
        get;
        init => field = Guard.Defined(value, nameof(SoilClass));
    }

    /// <summary>Gets the texture.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown texture.</exception>
    public SoilTexture? Texture
    {
        get;
        init => field = Guard.Defined(value, nameof(Texture));
    }

    /// <summary>Gets the cation exchange capacity.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Above 300 meq, more than pure humus holds.</exception>
    public CationCharge? ExchangeCapacity
    {
        get;
        init => field = value is { } known ? SoilLimits.ExchangeCapacity(known, nameof(ExchangeCapacity)) : null;
    }

    /// <summary>Gets the pH in water.</summary>
    public WaterPh? WaterPh { get; init; }

    /// <summary>Gets how the soil drains.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown class.</exception>
    public DrainageClass? Drainage
    {
        get;
        init => field = Guard.Defined(value, nameof(Drainage));
    }

    /// <summary>Gets a value indicating whether it is dry or thin.</summary>
    public bool IsDryOrThin { get; init; }

    /// <summary>Gets the region of the southern states it lies in.</summary>
    public SoilRegion? Region { get; init; }

    /// <summary>Gets the phosphorus-supplying power of the subsoil, as the map of Illinois prints it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown group.</exception>
    public SoilSupply? PhosphorusSupply
    {
        get;
        init => field = Guard.Defined(value, nameof(PhosphorusSupply));
    }

    /// <summary>Gets whether it counts as a soil of low or high exchange capacity on the map of Illinois; medium is not
    /// printed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown group.</exception>
    public SoilSupply? ExchangeCapacityGroup
    {
        get;
        init => field = Guard.Defined(value, nameof(ExchangeCapacityGroup));
    }

    /// <summary>Gets the sampled layer by the furrow slice convention; null when the report prints no depth.</summary>
    internal SampledLayer? Layer => Report.SampledDepth is { } depth ? SampledLayer.Conventional(depth) : null;

    /// <summary>Gets the weight per volume of the scooped soil (W/V).</summary>
    public Density? WeightPerVolume => Report.WeightPerVolume;

    /// <summary>Gets who says the soil class; null when nobody does.</summary>
    internal SoilWitness? SoilClassBy => By(SoilClass, Report.SoilClass);

    /// <summary>Gets who says the texture; null when nobody does.</summary>
    internal SoilWitness? TextureBy => By(Texture, Report.Texture);

    /// <summary>Gets who says the exchange capacity; null when nobody does.</summary>
    internal SoilWitness? ExchangeCapacityBy => By(ExchangeCapacity, Report.PrintedExchangeCapacity);

    /// <summary>Gets who says the pH in water; null when nobody does.</summary>
    internal SoilWitness? WaterPhBy => By(WaterPh, Report.WaterPh);

    /// <summary>Exchange capacity in meq/100 g; null when it is not known by weight.</summary>
    internal double? CapacityPer100Grams =>
        ExchangeCapacity switch
        {
            { Basis: CationChargeBasis.Per100Grams } charge => charge.Milliequivalents,
            { } charge when WeightPerVolume is { } density => charge.ByWeight(density).Milliequivalents,
            _ => null,
        };

    /// <summary>A report alone, as a soil of which nothing else is known.</summary>
    /// <param name="report">Report.</param>
    public static implicit operator PlotSoil(SoilReport report) => For(report);

    /// <summary>The soil as a laboratory reports it.</summary>
    /// <param name="report">Report.</param>
    /// <returns>The soil.</returns>
    public static PlotSoil For(SoilReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new(report);
    }

    /// <summary>The soil as a laboratory reports it and as the plot shows it.</summary>
    /// <param name="report">Report; what it states goes before what was seen.</param>
    /// <param name="plot">Plot.</param>
    /// <returns>The soil.</returns>
    public static PlotSoil For(SoilReport report, Plot plot)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(plot);
        return new(report)
        {
            SoilClass = report.SoilClass ?? plot.SoilClass,
            Texture = report.Texture ?? plot.Texture,
            Drainage = plot.Drainage,
            IsDryOrThin = plot.IsDryOrThin,
            Region = plot.SoilRegion,
            PhosphorusSupply = plot.PhosphorusSupply,
            ExchangeCapacityGroup = plot.ExchangeCapacityGroup,
        };
    }

    /// <summary>The same soil under another report of it.</summary>
    internal PlotSoil ReportedBy(SoilReport report) => this with { Report = report };

    /// <summary>Whether this is the very same soil.</summary>
    /// <param name="other">Other soil.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(PlotSoil? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>What is known, in words.</summary>
    /// <returns>Text such as <c>sandy loam, mineral, water pH 5.6</c>.</returns>
    public override string ToString()
    {
        string?[] parts =
        [
            Texture is { } texture ? SoilWords.Textures[texture] : null,
            SoilClass is { } known ? SoilWords.For(known) : null,
            WaterPh?.ToString(),
        ];
        string text = string.Join(", ", parts.Where(p => p is not null));
        return text.Length > 0 ? text : "soil of which nothing is known";
    }

    private static SoilWitness? By<T>(T? fact, T? printed) =>
        fact is null ? null
        : EqualityComparer<T?>.Default.Equals(fact, printed) ? SoilWitness.Laboratory
        : SoilWitness.OwnEyes;
}
