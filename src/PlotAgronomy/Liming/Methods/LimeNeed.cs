using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <summary>The lime a soil needs by one method, with its four labels, or why the method does not answer.</summary>
public sealed class LimeNeed : IWorkedResult
{
    private readonly EarlierLime? earlier;

    internal LimeNeed(
        LimeMethod method,
        LimeSample sample,
        double targetPh,
        double? reading,
        double? rawPoundsPerAcre,
        EarlierLime? earlier
    )
    {
        Method = method;
        Sample = sample;
        TargetPh = targetPh;
        Reading = reading;
        RawTonsPerAcre = rawPoundsPerAcre / ExactUnits.PoundsPerShortTon;
        this.earlier = earlier;
    }

    /// <summary>Gets the method.</summary>
    public LimeMethod Method { get; }

    /// <summary>Gets the sample.</summary>
    public LimeSample Sample { get; }

    /// <summary>Gets the pH aimed at.</summary>
    public double TargetPh { get; }

    /// <summary>Gets the reading that was used, in the method's terms; null when none was.</summary>
    public double? Reading { get; }

    /// <summary>Gets what the formula gave in ton/ac of the basis before a negative figure became none; null when there is no
    /// answer.</summary>
    public double? RawTonsPerAcre { get; }

    /// <summary>Gets the rate before earlier lime was taken off, or null.</summary>
    public LimeRate? Gross { get; internal init; }

    /// <summary>Gets the exact rate still needed; null when the method does not answer (the findings say why).</summary>
    public LimeRate? Rate { get; internal init; }

    /// <summary>Gets the rate as the institution would print it, rounded its way; the exact rate where it prints no
    /// rounding.</summary>
    public LimeRate? Published { get; internal init; }

    /// <summary>Gets the rate if the true reading is higher by the reading error; null where that lies outside the method or the
    /// reading is no pH.</summary>
    public LimeRate? Lowest { get; internal init; }

    /// <summary>Gets the rate if the true reading is lower by the reading error; null where that lies outside the method or the
    /// reading is no pH.</summary>
    public LimeRate? Highest { get; internal init; }

    /// <summary>Gets how far the reading may be off, in pH.</summary>
    public required double ReadingErrorPh { get; init; }

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => [.. new[] { Method.SourceId, Method.Basis.SourceId }.Distinct()];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        if (Gross is null || Rate is null)
        {
            return [];
        }

        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        if (Reading is { } reading && !Tolerance.IsAbove(reading, Method.HighestReading))
        {
            lines.AddRange(Method.Formula.Work(reading, Sample, TargetPh));
        }
        else
        {
            lines.Add(new("Base rate", "none", "0 ton/ac", Method.SourceId));
        }

        if (earlier?.CreditBy(Method.Institution, Sample.Class) is { } credit)
        {
            lines.Add(
                new(
                    "Earlier lime still to work",
                    "R - R x months x k, never below 0",
                    $"{LimeText.Tons(earlier.Rate.PoundsPerAcre)} ton/ac, {Amounts.Print(earlier.Months, 1)} months ago: "
                        + $"{LimeText.Tons(credit.PoundsPerAcre)} ton/ac",
                    "LIME-S7"
                )
            );
            lines.Add(
                new(
                    "Need",
                    "base rate - earlier lime, never below 0",
                    $"{LimeText.Tons(Gross.OfBasis.PoundsPerAcre)} - {LimeText.Tons(credit.PoundsPerAcre)} = "
                        + $"{LimeText.Tons(Rate.OfBasis.PoundsPerAcre)} ton/ac",
                    "LIME-S7"
                )
            );
        }

        lines.Add(new("Labels", "target, depth, lime, institution", Rate.ToString(), Method.SourceId));
        if (Lowest is not null && Highest is not null)
        {
            lines.Add(
                new(
                    "Range",
                    $"reading off by {Amounts.Print(ReadingErrorPh, 2)} pH",
                    $"{LimeText.Tons(Lowest.OfBasis.PoundsPerAcre)} to {LimeText.Tons(Highest.OfBasis.PoundsPerAcre)} ton/ac",
                    Method.Buffers.Contains(Soil.SoilBuffer.Smp) ? "LIME-S38" : "PRACTICE"
                )
            );
        }

        return lines.ToImmutable();
    }
}
