using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>Whether a method answers for a sample and target, and what every answer of it has to say.</summary>
internal sealed class LimeMethodChecks(LimeMethod method, LimeSample sample, double target, List<Finding> findings)
{
    internal void AddStandingFindings()
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
            Add(LimingCodes.DepthAssumed, ("method", method.Name), ("depth", LimeText.Inches(method.Depth)));
        }

        if (target > LimingConstants.All["over-lime-target"])
        {
            Add(LimingCodes.OverTarget);
        }

        if (sample.IsWeaklyBuffered && !method.Buffers.Contains(SoilBuffer.AdamsEvans))
        {
            findings.Add(WeakBuffering.CautionFor(sample));
        }
    }

    internal bool Covers(double? reading)
    {
        if (!method.Soils.Contains(sample.Class))
        {
            Add(LimingCodes.SoilOutsideMethod, ("method", method.Name), ("soil", SoilWords.For(sample.Class)));
            return false;
        }

        if (method.TargetPhs.Length > 0 && !method.TargetPhs.Contains(target))
        {
            Add(
                LimingCodes.TargetNotOffered,
                ("method", method.Name),
                ("offered", LimeText.List(method.TargetPhs)),
                ("target", LimeText.Ph(target))
            );
            return false;
        }

        if (sample.WaterPh is null)
        {
            Add(method.Formula.NeedsWaterPh ? LimingCodes.PhMissingRequired : LimingCodes.PhMissing);
            if (method.Formula.NeedsWaterPh)
            {
                return false;
            }
        }

        if (method.OnlyBelowWaterPh is { } limit && sample.WaterPh >= limit)
        {
            Add(LimingCodes.OnlyBelowPh, ("method", method.Name), ("limit", LimeText.Ph(limit)));
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
                LimingCodes.BufferOther,
                ("found", LimeReadings.InWords([other.Buffer])),
                ("method", method.Name),
                ("needed", LimeReadings.InWords(method.Buffers))
            );
        }
        else if (sample.UnnamedBufferPh is { } unnamed && method.Buffers.Length > 0)
        {
            Add(LimingCodes.BufferUnnamed, ("reading", Amounts.Print(unnamed, 2)));
        }
        else
        {
            Add(LimingCodes.ReadingMissing, ("method", method.Name), ("needed", method.Reads));
        }

        return false;
    }

    private bool WithinReadings(double reading)
    {
        if (method.Buffers.Any(b => b is SoilBuffer.Smp or SoilBuffer.Sikora) && reading > LimingConstants.All["high-buffer-ph"])
        {
            Add(LimingCodes.BufferHigh, ("reading", Amounts.Print(reading, 2)));
        }

        if (
            Tolerance.IsBelow(reading, method.LowestReading)
            || (Tolerance.IsAbove(reading, method.HighestReading) && !method.NoLimeAboveHighest)
        )
        {
            Add(
                method.LimitsArePrinted ? LimingCodes.ReadingOutside : LimingCodes.ReadingOutsidePractice,
                ("reading", Amounts.Print(reading, 2)),
                ("lowest", Amounts.Print(method.LowestReading, 2)),
                ("highest", Amounts.Print(method.HighestReading, 2)),
                ("method", method.Name)
            );
            return false;
        }

        return true;
    }

    private void Add(string code, params ReadOnlySpan<(string, string)> values) =>
        findings.Add(FindingCatalog.Create(code, values));
}
