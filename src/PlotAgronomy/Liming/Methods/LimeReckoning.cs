using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One run of a method on one sample: the checks in their order, then the formula, the credit and the range.</summary>
internal sealed class LimeReckoning(LimeMethod method, LimeSample sample, double target, EarlierLime? earlier, double error)
{
    private readonly List<Finding> findings = [];

    internal LimeNeed Answer()
    {
        var checks = new LimeMethodChecks(method, sample, target, findings);
        checks.AddStandingFindings();
        if (sample.WaterPh >= target)
        {
            Add(LimingCodes.PhAtTarget, ("ph", LimeText.Ph(sample.WaterPh!.Value)), ("target", LimeText.Ph(target)));
            return Result(null, 0, null, null);
        }

        if (method.NoLimeWithinPh is { } margin && target - sample.WaterPh < margin - Tolerance.Dust)
        {
            Add(
                LimingCodes.WithinMargin,
                ("ph", LimeText.Ph(sample.WaterPh!.Value)),
                ("margin", LimeText.Ph(margin)),
                ("target", LimeText.Ph(target))
            );
            return Result(null, 0, null, null);
        }

        double? reading = method.Formula.ReadingOf(sample);
        if (!checks.Covers(reading))
        {
            return Result(reading, null, null, null);
        }

        if (reading is { } read && Tolerance.IsAbove(read, method.HighestReading))
        {
            Add(
                LimingCodes.ReadingAboveTable,
                ("reading", Amounts.Print(read, 2)),
                ("highest", Amounts.Print(method.HighestReading, 2)),
                ("method", method.Name)
            );
            return Result(reading, 0, null, null);
        }

        findings.AddRange(method.Formula.Findings(reading!.Value, sample, target));
        double? raw = method.Formula.PoundsPerAcre(reading.Value, sample, target);
        if (raw is null && !findings.Any(f => f.Severity == FindingSeverity.Warning))
        {
            Add(
                LimingCodes.CellBlank,
                ("method", method.Name),
                ("reading", Amounts.Print(reading.Value, 2)),
                ("target", LimeText.Ph(target))
            );
        }

        if (raw < 0)
        {
            Add(LimingCodes.NegativeMeansNone, ("raw", LimeText.Tons(raw.Value)));
        }

        AddWhenALowerTargetNeedsMore(reading.Value, raw);
        return raw is null
            ? Result(reading, null, null, null)
            : Result(reading, raw, Shifted(reading.Value + error), Shifted(reading.Value - error));
    }

    /// <summary>Published equations of neighbouring targets may cross; then the answer is out of step and says so.</summary>
    private void AddWhenALowerTargetNeedsMore(double reading, double? raw)
    {
        if (raw is not { } pounds)
        {
            return;
        }

        foreach (double lower in method.TargetPhs.Where(t => t < target && !(sample.WaterPh >= t)))
        {
            if (method.Formula.PoundsPerAcre(reading, sample, lower) is { } more && more > Math.Max(0, pounds) + 1e-6)
            {
                Add(
                    LimingCodes.LowerTargetNeedsMore,
                    ("method", method.Name),
                    ("lower", LimeText.Ph(lower)),
                    ("target", LimeText.Ph(target))
                );
                return;
            }
        }
    }

    /// <summary>The rate for a shifted pH reading; null where that lies outside the method or the reading is no pH.</summary>
    private double? Shifted(double reading) =>
        !method.Formula.ReadsPh || Tolerance.IsBelow(reading, method.LowestReading) ? null
        : Tolerance.IsAbove(reading, method.HighestReading) ? (method.NoLimeAboveHighest ? 0 : null)
        : method.Formula.PoundsPerAcre(reading, sample, target);

    private LimeNeed Result(double? reading, double? rawPoundsPerAcre, double? lowest, double? highest)
    {
        var gross = Labelled(rawPoundsPerAcre);
        if (gross is { OfBasis.PoundsPerAcre: > 0 } && method.Formula.ReadsPh && (lowest is null || highest is null))
        {
            Add(LimingCodes.RangeOpen, ("error", Amounts.Print(error, 2)), ("method", method.Name));
        }

        var net = gross is not null && earlier is not null ? earlier.TakeOff(gross, sample.Class, findings) : gross;
        var rounding = LimeRounding.ForInstitution(method.Institution);
        var published = net is not null && rounding is not null ? net.With(rounding.Apply(net.OfBasis)) : net;
        if (
            net is { OfBasis.PoundsPerAcre: > 0 }
            && published is { OfBasis.PoundsPerAcre: 0 }
            && rounding is { NoneBelow.PoundsPerAcre: > 0 }
        )
        {
            Add(
                LimingCodes.SmallNeed,
                ("limit", LimeText.Tons(rounding.NoneBelow.PoundsPerAcre)),
                ("institution", method.Institution.Name)
            );
        }

        return new LimeNeed(method, sample, target, reading, rawPoundsPerAcre, earlier)
        {
            Gross = gross,
            Rate = net,
            Published = published,
            Lowest = Credited(lowest),
            Highest = Credited(highest),
            ReadingErrorPh = error,
            Findings = Finding.InOrder(findings),
        };
    }

    private LimeRate? Credited(double? poundsPerAcre) =>
        Labelled(poundsPerAcre) is { } rate ? earlier?.TakeOff(rate, sample.Class, findings) ?? rate : null;

    private LimeRate? Labelled(double? poundsPerAcre) =>
        poundsPerAcre is { } pounds
            ? LimeRate.Of(
                ApplicationRate.FromPoundsPerAcre(Math.Max(0, pounds)),
                target,
                method.Depth,
                method.Basis,
                method.Institution
            )
            : null;

    private void Add(string code, params ReadOnlySpan<(string, string)> values) =>
        findings.Add(FindingCatalog.Create(code, values));
}
