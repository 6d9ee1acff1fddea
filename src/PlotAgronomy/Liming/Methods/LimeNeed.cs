using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The lime a soil needs by one method, with its four labels, or why the method does not answer.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class LimeNeed : IWorkedResult
{
    private readonly LimeNeedSum sum;

    internal LimeNeed(LimeMethod method, PlotSoil soil, double targetPh, EarlierLime? earlier, double readingErrorPh) =>
        sum = new(method, soil, targetPh, earlier, readingErrorPh);

    /// <summary>Gets the method.</summary>
    public LimeMethod Method => sum.Method;

    /// <summary>Gets the soil.</summary>
    public PlotSoil Soil => sum.Soil;

    /// <summary>Gets the pH aimed at.</summary>
    public double TargetPh => sum.Target;

    /// <summary>Gets the reading that was used, in the method's terms; null when none was.</summary>
    public double? Reading => sum.Reading;

    /// <summary>Gets what the formula gave in ton/ac of the basis before a negative figure became none; null when there is no
    /// answer.</summary>
    internal double? RawTonsPerAcre => sum.RawPoundsPerAcre / ExactUnits.PoundsPerShortTon;

    /// <summary>Gets the rate before earlier lime was taken off, or null.</summary>
    public LimeRate? Gross => sum.Gross;

    /// <summary>Gets the exact rate still needed; null when the method does not answer (the findings say why).</summary>
    public LimeRate? Rate => sum.Rate;

    /// <summary>Gets the rate as the institution would print it, rounded its way; the exact rate where it prints no
    /// rounding.</summary>
    public LimeRate? Published => sum.Published;

    /// <summary>Gets the rate if the true reading is higher by the reading error; null where that lies outside the method or the
    /// reading is no pH.</summary>
    public LimeRate? Lowest => sum.Lowest;

    /// <summary>Gets the rate if the true reading is lower by the reading error; null where that lies outside the method or the
    /// reading is no pH.</summary>
    public LimeRate? Highest => sum.Highest;

    /// <summary>Gets how far the reading may be off, in pH.</summary>
    public double ReadingErrorPh => sum.Error;

    /// <summary>Gets the lime put on before that was taken into account, or null.</summary>
    public EarlierLime? EarlierLime => sum.Earlier;

    /// <summary>The rate as the institution rounds it, where that is another than the exact one.</summary>
    internal LimeRate? Rounded => Published is { } rounded && rounded.OfBasis != Rate?.OfBasis ? rounded : null;

    /// <summary>Both rates that the reading error allows, where they differ.</summary>
    internal (LimeRate Low, LimeRate High)? ReadingRange =>
        this is { Lowest: { } low, Highest: { } high } && high.OfBasis > low.OfBasis ? (low, high) : null;

    internal LimeStop Stop => sum.Stop;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(sum.Findings());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Method.Origin.Sources.Union(Method.Basis.Origin.Sources)];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        if (Gross is not { } gross || Rate is not { } rate)
        {
            return [];
        }

        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        if (Reading is { } reading && !Tolerance.IsAbove(reading, Method.HighestReading))
        {
            lines.AddRange(Method.Formula.Work(reading, Soil, TargetPh));
        }
        else
        {
            lines.Add(LimingFormulas.All["lime-no-rate"].Line("0 ton/ac", ("what", LimeTableLines.BaseRate)).From(Method.Origin));
        }

        if (EarlierLime is { } earlier && earlier.CreditBy(Method.Institution, Soil.Class) is { } credit)
        {
            lines.AddRange(earlier.CreditLines("Earlier lime still to work", Method.Institution, Soil.Class));
            lines.Add(
                LimingFormulas
                    .All["lime-less-credit"]
                    .Line(
                        $"{LimeText.Tons(rate.OfBasis.PoundsPerAcre)} ton/ac",
                        ("base rate", LimeText.Tons(gross.OfBasis.PoundsPerAcre)),
                        ("earlier lime still to work", LimeText.Tons(credit.PoundsPerAcre))
                    )
            );
        }

        lines.Add(LimingFormulas.All["lime-as-labelled"].Line(rate.ToString(), ("what", "Labels")).From(Method.Origin));
        if (Lowest is { } lowest && Highest is { } highest)
        {
            lines.Add(RangeLine(lowest, highest));
        }

        return lines.ToImmutable();
    }

    private WorkedLine RangeLine(LimeRate lowest, LimeRate highest)
    {
        var line = LimingFormulas
            .All["lime-reading-range"]
            .Line(
                $"{LimeText.Tons(lowest.OfBasis.PoundsPerAcre)} to {LimeText.Tons(highest.OfBasis.PoundsPerAcre)} ton/ac, "
                    + $"off by {Amounts.Print(ReadingErrorPh, 2)} pH"
            );
        return Method.Buffers.Contains(SoilBuffer.Smp) ? line.From(LimingConstants.All.Find("reading-error").Origin) : line;
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
