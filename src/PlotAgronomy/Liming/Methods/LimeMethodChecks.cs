using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>Whether a method answers for a soil and target, and what every answer of it has to say.</summary>
internal static class LimeMethodChecks
{
    /// <summary>What needs no reading: the soil is none of the method's, or at its target, or near enough.</summary>
    internal static LimeStop WithoutReading(LimeMethod method, PlotSoil soil, double target) =>
        !method.Soils.Contains(soil.Class) ? LimeStop.Soil
        : soil.PhInWater >= target ? LimeStop.AtTarget
        : method.NoLimeWithinPh is { } margin && target - soil.PhInWater < margin - Tolerance.Dust ? LimeStop.WithinMargin
        : LimeStop.None;

    internal static LimeStop WithReading(LimeMethod method, PlotSoil soil, double target, double? reading) =>
        method.TargetPhs.Length > 0 && !method.TargetPhs.Contains(target) ? LimeStop.Target
        : soil.PhInWater is null && method.Formula.NeedsWaterPh ? LimeStop.WaterPhMissing
        : method.OnlyBelowWaterPh is { } limit && soil.PhInWater >= limit ? LimeStop.WaterPhTooHigh
        : reading is not { } read ? LimeStop.ReadingMissing
        : !method.Formula.Holds(soil, target) ? LimeStop.Formula
        : Tolerance.IsBelow(read, method.LowestReading) ? LimeStop.ReadingOutside
        : !Tolerance.IsAbove(read, method.HighestReading) ? LimeStop.None
        : method.NoLimeAboveHighest ? LimeStop.AboveTable
        : LimeStop.ReadingOutside;

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
            && method.Buffers.Any(b => b is SoilBuffer.Smp or SoilBuffer.Sikora)
            && reading > LimingConstants.All["high-buffer-ph"]
        )
        {
            yield return FindingCatalog.Create(LimingCodes.BufferHigh, ("reading", Amounts.Print(reading.Value, 2)));
        }

        if (Reason(method, soil, target, reading, stop) is { } reason)
        {
            yield return reason;
        }
    }

    private static Finding? Reason(LimeMethod method, PlotSoil soil, double target, double? reading, LimeStop stop) =>
        stop switch
        {
            LimeStop.AtTarget => FindingCatalog.Create(
                LimingCodes.PhAtTarget,
                ("ph", LimeText.Ph(soil.PhInWater!.Value)),
                ("target", LimeText.Ph(target))
            ),
            LimeStop.WithinMargin => FindingCatalog.Create(
                LimingCodes.WithinMargin,
                ("ph", LimeText.Ph(soil.PhInWater!.Value)),
                ("margin", LimeText.Ph(method.NoLimeWithinPh!.Value)),
                ("target", LimeText.Ph(target))
            ),
            LimeStop.Soil => FindingCatalog.Create(
                LimingCodes.SoilOutsideMethod,
                ("method", method.Name),
                ("soil", SoilWords.For(soil.Class))
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
            LimeStop.ReadingMissing => Missing(method, soil),
            LimeStop.Formula => method.Formula.Refusal(soil, target),
            LimeStop.ReadingOutside => FindingCatalog.Create(
                method.LimitsArePrinted ? LimingCodes.ReadingOutside : LimingCodes.ReadingOutsidePractice,
                ("reading", Amounts.Print(reading!.Value, 2)),
                ("lowest", Amounts.Print(method.LowestReading, 2)),
                ("highest", Amounts.Print(method.HighestReading, 2)),
                ("method", method.Name)
            ),
            LimeStop.AboveTable => FindingCatalog.Create(
                LimingCodes.ReadingAboveTable,
                ("reading", Amounts.Print(reading!.Value, 2)),
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
            : FindingCatalog.Create(LimingCodes.ReadingMissing, ("method", method.Name), ("needed", method.Reads));
    }
}
