using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>One run of a method on one sample: the checks in their order, then the formula, the credit and the range.</summary>
internal sealed class LimeReckoning(LimeMethod method, LimeSample sample, double target, EarlierLime? earlier, double error)
{
    private readonly List<Finding> findings = [];

    internal LimeNeed Answer()
    {
        AddStandingFindings();
        if (sample.WaterPh >= target)
        {
            Add("lime-ph-at-target", ("ph", LimeText.Ph(sample.WaterPh!.Value)), ("target", LimeText.Ph(target)));
            return Result(null, 0, null, null);
        }

        if (method.NoLimeWithinPh is { } margin && target - sample.WaterPh < margin - Tolerance.Dust)
        {
            Add(
                "lime-within-margin",
                ("ph", LimeText.Ph(sample.WaterPh!.Value)),
                ("margin", LimeText.Ph(margin)),
                ("target", LimeText.Ph(target))
            );
            return Result(null, 0, null, null);
        }

        double? reading = method.Formula.ReadingOf(sample);
        if (!Covers(reading))
        {
            return Result(reading, null, null, null);
        }

        if (reading is { } read && Tolerance.IsAbove(read, method.HighestReading))
        {
            Add(
                "lime-reading-above-table",
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
                "lime-cell-blank",
                ("method", method.Name),
                ("reading", Amounts.Print(reading.Value, 2)),
                ("target", LimeText.Ph(target))
            );
        }

        if (raw < 0)
        {
            Add("lime-negative-means-none", ("raw", LimeText.Tons(raw.Value)));
        }

        AddWhenALowerTargetNeedsMore(reading.Value, raw);
        return raw is null
            ? Result(reading, null, null, null)
            : Result(reading, raw, Shifted(reading.Value + error), Shifted(reading.Value - error));
    }

    private void AddStandingFindings()
    {
        if (method.Status == DataStatus.Memory)
        {
            findings.Add(MemoryGate.FindingFor(method.Name, method.SourceId));
        }

        if (method.StandingFinding is { } code)
        {
            Add(code);
        }

        if (!method.DepthIsPrinted)
        {
            Add("lime-depth-assumed", ("method", method.Name), ("depth", LimeText.Inches(method.Depth)));
        }

        if (target > LimingConstants.All["over-lime-target"])
        {
            Add("lime-over-target");
        }

        if (sample.IsWeaklyBuffered && !method.Buffers.Contains(SoilBuffer.AdamsEvans))
        {
            findings.Add(WeaklyBufferedLime.CautionFor(sample));
        }
    }

    private bool Covers(double? reading)
    {
        if (!method.Soils.Contains(sample.Class))
        {
            Add(
                "lime-soil-outside-method",
                ("method", method.Name),
                (
                    "soil",
                    sample.Class switch
                    {
                        SoilClass.Mineral => "mineral",
                        SoilClass.Organic => "organic",
                        _ => "mineral-organic",
                    }
                )
            );
            return false;
        }

        if (method.TargetPhs.Length > 0 && !method.TargetPhs.Contains(target))
        {
            Add(
                "lime-target-not-offered",
                ("method", method.Name),
                ("offered", LimeText.List(method.TargetPhs)),
                ("target", LimeText.Ph(target))
            );
            return false;
        }

        if (sample.WaterPh is null)
        {
            Add(method.Formula.NeedsWaterPh ? "lime-ph-missing-required" : "lime-ph-missing");
            if (method.Formula.NeedsWaterPh)
            {
                return false;
            }
        }

        if (method.OnlyBelowWaterPh is { } limit && sample.WaterPh >= limit)
        {
            Add("lime-only-below-ph", ("method", method.Name), ("limit", LimeText.Ph(limit)));
            return false;
        }

        if (!HasReading(reading))
        {
            return false;
        }

        if (method.Formula.Refusal(sample, target) is { } refusal)
        {
            findings.Add(refusal);
            return false;
        }

        return WithinReadings(reading!.Value);
    }

    private bool HasReading(double? reading)
    {
        if (reading is not null)
        {
            return true;
        }

        if (sample.Report.BufferPhs is [var other, ..] && method.Buffers.Length > 0)
        {
            Add(
                "lime-buffer-other",
                ("found", LimeReadings.InWords([other.Buffer])),
                ("method", method.Name),
                ("needed", LimeReadings.InWords(method.Buffers))
            );
        }
        else if (sample.UnnamedBufferPh is { } unnamed && method.Buffers.Length > 0)
        {
            Add("lime-buffer-unnamed", ("reading", Amounts.Print(unnamed, 2)));
        }
        else
        {
            Add("lime-reading-missing", ("method", method.Name), ("needed", method.Reads));
        }

        return false;
    }

    private bool WithinReadings(double reading)
    {
        if (method.Buffers.Any(b => b is SoilBuffer.Smp or SoilBuffer.Sikora) && reading > LimingConstants.All["high-buffer-ph"])
        {
            Add("lime-buffer-high", ("reading", Amounts.Print(reading, 2)));
        }

        if (
            Tolerance.IsBelow(reading, method.LowestReading)
            || (Tolerance.IsAbove(reading, method.HighestReading) && !method.NoLimeAboveHighest)
        )
        {
            Add(
                method.LimitsArePrinted ? "lime-reading-outside" : "lime-reading-outside-practice",
                ("reading", Amounts.Print(reading, 2)),
                ("lowest", Amounts.Print(method.LowestReading, 2)),
                ("highest", Amounts.Print(method.HighestReading, 2)),
                ("method", method.Name)
            );
            return false;
        }

        return true;
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
                    "lime-lower-target-needs-more",
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
            Add("lime-range-open", ("error", Amounts.Print(error, 2)), ("method", method.Name));
        }

        var net = gross is not null && earlier is not null ? earlier.TakeOff(gross, sample.Class, findings) : gross;
        var rounding = LimeRounding.TryFind(method.Institution);
        var published = net is not null && rounding is not null ? net.With(rounding.Apply(net.OfBasis)) : net;
        if (
            net is { OfBasis.PoundsPerAcre: > 0 }
            && published is { OfBasis.PoundsPerAcre: 0 }
            && rounding is { NoneBelow.PoundsPerAcre: > 0 }
        )
        {
            Add(
                "lime-small-need",
                ("limit", LimeText.Tons(rounding.NoneBelow.PoundsPerAcre)),
                ("institution", method.Institution)
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
