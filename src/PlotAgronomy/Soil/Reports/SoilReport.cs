using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A laboratory's soil report as printed. What the report does not print is null, never zero.</summary>
/// <remarks>It is only equal to itself; <c>report with { ... }</c> makes another one, to see what another reading would
/// do.</remarks>
/// <example>
/// <code>
/// var report = new SoilReport
/// {
///     Laboratory = "state laboratory",
///     WaterPh = WaterPh.FromValue(5.6),
///     BufferPhs = [BufferPh.FromValue(6.4, SoilBuffer.Sikora)],
/// };
/// Console.WriteLine((report with { WaterPh = WaterPh.FromValue(5.8) }).WaterPh);
/// // water pH 5.8
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial record SoilReport
{
    /// <summary>Gets the institution that ran the test, such as a state laboratory.</summary>
    /// <value><c>the laboratory</c> unless stated.</value>
    /// <exception cref="ArgumentException">Blank.</exception>
    public string Laboratory
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Laboratory));
    } = UnnamedLaboratory;

    /// <summary>Gets the program whose ratings the report follows, when it names one other than the laboratory's own.</summary>
    public string? Program { get; init; }

    /// <summary>Gets the readings in the order of the report.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<SoilReading> Readings
    {
        get;
        init => field = Guard.Listed(value, nameof(Readings));
    } = [];

    /// <summary>Gets the pH in water.</summary>
    public WaterPh? WaterPh { get; init; }

    /// <summary>Gets the pH in a salt solution.</summary>
    public SaltPh? SaltPh { get; init; }

    /// <summary>Gets the buffer pH, or several when more than one buffer was run.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<BufferPh> BufferPhs
    {
        get;
        init => field = Guard.Listed(value, nameof(BufferPhs));
    } = [];

    /// <summary>Gets the exchangeable (neutralizable) acidity as printed.</summary>
    public CationCharge? ExchangeableAcidity { get; init; }

    /// <summary>Gets the cation exchange capacity as printed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Above 300 meq, more than pure humus holds.</exception>
    public CationCharge? PrintedExchangeCapacity
    {
        get;
        init => field = value is { } known ? SoilLimits.ExchangeCapacity(known, nameof(PrintedExchangeCapacity)) : null;
    }

    /// <summary>Gets the base saturation as printed.</summary>
    public Fraction? PrintedBaseSaturation { get; init; }

    /// <summary>Gets the organic matter as printed.</summary>
    public Fraction? OrganicMatter { get; init; }

    /// <summary>Gets the humic matter as printed (North Carolina).</summary>
    public Fraction? HumicMatter { get; init; }

    /// <summary>Gets the weight per volume of the scooped soil (W/V).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or denser than solid mineral (2.65 g/cm3).</exception>
    public Density? WeightPerVolume
    {
        get;
        init => field = value is { } known ? SoilLimits.WeightPerVolume(known, nameof(WeightPerVolume)) : null;
    }

    /// <summary>Gets the depth that was sampled.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or deeper than any probe (48 in).</exception>
    public Length? SampledDepth
    {
        get;
        init => field = value is { } known ? SampledLayer.Checked(known, nameof(SampledDepth)) : null;
    }

    /// <summary>Gets the day the sample was taken.</summary>
    public DateOnly? SampledOn { get; init; }

    /// <summary>Gets the soil class as printed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown class.</exception>
    public SoilClass? SoilClass
    {
        get;
        init => field = Guard.Defined(value, nameof(SoilClass));
    }

    /// <summary>Gets the texture, when it is known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown texture.</exception>
    public SoilTexture? Texture
    {
        get;
        init => field = Guard.Defined(value, nameof(Texture));
    }

    /// <summary>Gets a buffer pH that stands on the report without the name of its buffer. It is never used; it only tells why
    /// there is no answer.</summary>
    public double? UnnamedBufferPh { get; init; }

    /// <summary>Gets Georgia's lime buffer capacity.</summary>
    public LimeBufferCapacity? LimeBufferCapacity { get; init; }

    /// <summary>Gets the state in which the sample was extracted (Iowa reads potassium by it).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown state.</exception>
    public SampleMoisture? SampleMoisture
    {
        get;
        init => field = Guard.Defined(value, nameof(SampleMoisture));
    }

    /// <summary>Gets the phosphorus rating as printed, such as <c>medium</c> (South Carolina, whose limits for phosphorus are
    /// not in this library).</summary>
    public string? PrintedPhosphorusRating { get; init; }

    /// <summary>Gets the potassium of a sample of the subsoil (South Carolina cuts the potash where the subsoil holds
    /// enough).</summary>
    public SoilReading? SubsoilPotassium { get; init; }

    /// <summary>What a laboratory is called that nobody names.</summary>
    internal const string UnnamedLaboratory = "the laboratory";

    /// <summary>A report that prints nothing, where there is none.</summary>
    internal static SoilReport None { get; } = new();

    /// <summary>Whether it prints anything that lime or nutrients could be told from; else it is as good as none.</summary>
    internal bool PrintsReadings =>
        !Readings.IsEmpty
        || !BufferPhs.IsEmpty
        || WaterPh is not null
        || SaltPh is not null
        || UnnamedBufferPh is not null
        || ExchangeableAcidity is not null
        || LimeBufferCapacity is not null;

    /// <summary>Finds the reading of an analyte. Of several extractants or units the choice does not depend on the order of the
    /// report.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <returns>The reading, or null when the report prints none, or two of one kind that differ.</returns>
    public SoilReading? Find(SoilAnalyte analyte) => ReadingKinds.OnlyOne(FindAll(analyte));

    /// <summary>Finds the reading of an analyte by one extractant.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <param name="extractant">Extractant.</param>
    /// <returns>The reading, or null when the report prints none, or two that differ.</returns>
    public SoilReading? Find(SoilAnalyte analyte, Extractant extractant) =>
        ReadingKinds.OnlyOne(FindAll(analyte).Where(r => r.Extractant == Guard.Defined(extractant)));

    /// <summary>Finds every reading of an analyte, in the order of the report.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <returns>The readings; empty when there is none.</returns>
    public ImmutableArray<SoilReading> FindAll(SoilAnalyte analyte)
    {
        Guard.Defined(analyte);
        return [.. Readings.Where(r => r.Analyte == analyte)];
    }

    /// <summary>Finds the reading in one buffer.</summary>
    /// <param name="buffer">Buffer.</param>
    /// <returns>The buffer pH, or null when that buffer was not run, or reads twice and differs.</returns>
    public BufferPh? FindBuffer(SoilBuffer buffer)
    {
        Guard.Defined(buffer);
        BufferPh? found = null;
        foreach (var read in BufferPhs)
        {
            if (read.Buffer == buffer)
            {
                if (found is not null && found != read)
                {
                    return null;
                }

                found = read;
            }
        }

        return found;
    }

    /// <summary>Whether this is the very same report.</summary>
    /// <param name="other">Other report.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(SoilReport? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The laboratory and the day of sampling.</summary>
    /// <returns>Text such as <c>report of North Carolina, sampled 2026-03-14</c>.</returns>
    public override string ToString() =>
        SampledOn is { } day
            ? string.Create(CultureInfo.InvariantCulture, $"report of {Laboratory}, sampled {day:yyyy-MM-dd}")
            : $"report of {Laboratory}";

    /// <summary>Written here because the compiler's own would print a quantity in the words of the culture.</summary>
    private bool PrintMembers(StringBuilder text)
    {
        text.Append(ToString());
        return true;
    }
}
