using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>What a method has to say with its answer for a soil and target, or without one.</summary>
internal static class LimeMethodChecks
{
    internal static IEnumerable<Finding> Standing(LimeMethod method, PlotSoil soil, double target)
    {
        if (method.Status == DataStatus.Memory)
        {
            yield return MemoryGate.FindingFor(method.Name, method.Origin);
        }

        foreach (var swapped in SwappedPh.Of(soil.Report, soil.WaterPh))
        {
            yield return swapped;
        }

        if (
            soil.SoilClass is null
            && soil.Report.OrganicMatter is null
            && method.Soils.Contains(SoilClass.Organic) != method.Soils.Contains(SoilClass.Mineral)
        )
        {
            yield return FindingCatalog.Create(LimingCodes.SoilClassAssumed, ("method", method.Name));
        }

        if (method.StandingFinding is { } code)
        {
            yield return FindingCatalog.Create(code);
        }

        if (!method.DepthIsPrinted)
        {
            yield return FindingCatalog.Create(
                LimingCodes.DepthAssumed,
                ("method", method.Name),
                ("depth", LimeText.Inches(method.Depth))
            );
        }

        if (target > LimingConstants.All["over-lime-target"])
        {
            yield return FindingCatalog.Create(LimingCodes.OverTarget);
        }

        if (soil.IsWeaklyBuffered && !method.IsForWeakSoils)
        {
            yield return WeakBuffering.CautionFor(soil);
        }
    }

    /// <summary>What the checks found on their way to a stop, or to none.</summary>
    internal static IEnumerable<Finding> Found(LimeMethod method, PlotSoil soil, double target, double? reading, LimeStop stop)
    {
        if (
            stop is not (LimeStop.AtTarget or LimeStop.WithinMargin or LimeStop.Soil or LimeStop.Target)
            && soil.PhInWater is null
        )
        {
            yield return FindingCatalog.Create(
                stop == LimeStop.WaterPhMissing ? LimingCodes.PhMissingRequired : LimingCodes.PhMissing
            );
        }

        if (
            (stop is LimeStop.None or LimeStop.ReadingOutside or LimeStop.AboveTable)
            && reading > HighBufferPh(method)
        )
        {
            yield return FindingCatalog.Create(LimingCodes.BufferHigh, ("reading", Amounts.Print(reading.Value, 2)));
        }

        if (stop == LimeStop.ReadingMissing)
        {
            yield return Missing(method, soil);
        }
        else if (ReasonOf(stop, method, soil.Class, Words(soil.PhInWater), Words(reading), target) is { } reason)
        {
            yield return reason;
        }

        static string Words(double? number) => number is { } known ? Amounts.Print(known, 2) : "";
    }

    /// <summary>The buffer pH above which a reading is doubted; infinite for methods of other readings.</summary>
    internal static double HighBufferPh(LimeMethod method) =>
        method.Buffers.Any(b => b is SoilBuffer.Smp or SoilBuffer.Sikora)
            ? LimingConstants.All["high-buffer-ph"]
            : double.PositiveInfinity;

    /// <summary>Why a method stopped, with water pH and reading in words; null where that is said elsewhere.</summary>
    internal static Finding? ReasonOf(
        LimeStop stop,
        LimeMethod method,
        SoilClass soilClass,
        string waterPh,
        string reading,
        double target
    ) =>
        stop switch
        {
            LimeStop.AtTarget => FindingCatalog.Create(
                LimingCodes.PhAtTarget,
                ("ph", waterPh),
                ("target", LimeText.Ph(target))
            ),
            LimeStop.WithinMargin => FindingCatalog.Create(
                LimingCodes.WithinMargin,
                ("ph", waterPh),
                ("margin", LimeText.Ph(method.NoLimeWithinPh!.Value)),
                ("target", LimeText.Ph(target))
            ),
            LimeStop.Soil => FindingCatalog.Create(
                LimingCodes.SoilOutsideMethod,
                ("method", method.Name),
                ("soil", SoilWords.For(soilClass))
            ),
            LimeStop.Target => FindingCatalog.Create(
                LimingCodes.TargetNotOffered,
                ("method", method.Name),
                ("offered", LimeText.List(method.TargetPhs)),
                ("target", LimeText.Ph(target))
            ),
            LimeStop.WaterPhTooHigh => FindingCatalog.Create(
                LimingCodes.OnlyBelowPh,
                ("method", method.Name),
                ("limit", LimeText.Ph(method.OnlyBelowWaterPh!.Value))
            ),
            LimeStop.Formula => method.Formula.Refusal(waterPh, target),
            LimeStop.ReadingOutside => FindingCatalog.Create(
                method.LimitsArePrinted ? LimingCodes.ReadingOutside : LimingCodes.ReadingOutsidePractice,
                ("reading", reading),
                ("lowest", Amounts.Print(method.LowestReading, 2)),
                ("highest", Amounts.Print(method.HighestReading, 2)),
                ("method", method.Name)
            ),
            LimeStop.AboveTable => FindingCatalog.Create(
                LimingCodes.ReadingAboveTable,
                ("reading", reading),
                ("highest", Amounts.Print(method.HighestReading, 2)),
                ("method", method.Name)
            ),
            _ => null,
        };

    private static Finding Missing(LimeMethod method, PlotSoil soil)
    {
        if (method.Buffers.Select(b => ReadingTwice.OfBuffer(soil.Report, b)).OfType<Finding>().FirstOrDefault() is { } twice)
        {
            return twice;
        }

        if (soil.Report.BufferPhs is [var other, ..] && method.Buffers.Length > 0)
        {
            return FindingCatalog.Create(
                LimingCodes.BufferOther,
                ("found", LimeReadings.InWords([other.Buffer])),
                ("method", method.Name),
                ("needed", LimeReadings.InWords(method.Buffers))
            );
        }

        return soil.Report.UnnamedBufferPh is { } unnamed && method.Buffers.Length > 0
            ? FindingCatalog.Create(LimingCodes.BufferUnnamed, ("reading", Amounts.Print(unnamed, 2)))
            : NoReading(method);
    }

    internal static Finding NoReading(LimeMethod method) =>
        FindingCatalog.Create(LimingCodes.ReadingMissing, ("method", method.Name), ("needed", method.Reads));
}
