using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <content>The working.</content>
public sealed partial class LimeNeed
{
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
}
