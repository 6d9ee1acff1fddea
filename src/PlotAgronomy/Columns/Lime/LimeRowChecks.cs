using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>What is checked in every row of a lime column, and what it comes to as status and flags.</summary>
internal sealed class LimeRowChecks
{
    private readonly LimeStops stops;
    private readonly PhPairRule pair;
    private readonly bool readsBuffer;
    private readonly bool isTextureRead;
    private readonly double leastReading;
    private readonly double mostReading;
    private readonly double highBufferPh;
    private readonly LimeRowFlags flags;
    private readonly ulong[] flagOfStop;
    private readonly RowStatus[] statusOfStop;

    internal LimeRowChecks(LimeMethod method, double targetPh, SoilClass soilClass, SoilTexture? texture, SoilBuffer? buffer)
    {
        stops = new(method, soilClass, targetPh);
        pair = buffer is { } ran ? PhPairRule.For(ran) : default;
        readsBuffer = buffer is not null;
        isTextureRead = method.Formula.TakesTexture(texture);
        (leastReading, mostReading) = method.Formula.PossibleReadings;
        highBufferPh = LimeMethodChecks.HighBufferPh(method);
        flags = new(method, targetPh, soilClass, buffer);
        var all = Enum.GetValues<LimeStop>();
        flagOfStop = Array.ConvertAll(all, flags.Of);
        statusOfStop = Array.ConvertAll(all, StatusOf);
        if (method.Formula.Refusal("", targetPh)?.Code == LimingCodes.PhMissingRequired)
        {
            statusOfStop[(int)LimeStop.Formula] = RowStatus.Missing;
        }
    }

    internal RowFindings Findings => flags.Findings;

    /// <summary>The flag of a row that nothing is worked out for, whatever the method; 0 for all others.</summary>
    internal ulong ImplausibleFlag(double waterPh, double reading) =>
        waterPh < double.Epsilon || waterPh > PhScale.Highest || reading < leastReading || reading > mostReading
            ? flags.Impossible
        : !readsBuffer ? 0
        : pair.LooksSwapped(waterPh, reading) ? flags.Swapped
        : pair.Contradicts(waterPh, reading) ? flags.Contradictory
        : 0;

    internal LimeStop StopOf(double waterPh, double reading, bool holds)
    {
        var stop = stops.WithoutReading(waterPh);
        return stop != LimeStop.None ? stop : stops.WithReading(waterPh, isTextureRead ? reading : double.NaN, holds);
    }

    internal (double Rate, RowStatus Status, ulong Flags) Stopped(LimeStop stop, double waterPh, double reading)
    {
        var status = statusOfStop[(int)stop];
        return (
            status == RowStatus.NoneNeeded ? 0 : double.NaN,
            status,
            flagOfStop[(int)stop]
                | (stop is LimeStop.Soil or LimeStop.Target ? 0 : MissingPhFlag(waterPh))
                | (stop is LimeStop.ReadingOutside or LimeStop.AboveTable ? HighBufferFlag(reading) : 0)
        );
    }

    internal (double Rate, RowStatus Status, ulong Flags) Answered(
        double poundsPerAcre,
        LimeRemarks remarks,
        double waterPh,
        double reading
    )
    {
        ulong found = MissingPhFlag(waterPh) | HighBufferFlag(reading) | FlagsOf(remarks);
        return double.IsNaN(poundsPerAcre) ? (double.NaN, RowStatus.OutsideDomain, found | flags.NoRate)
            : poundsPerAcre > 0 ? (poundsPerAcre, RowStatus.Answered, found)
            : (0, RowStatus.NoneNeeded, poundsPerAcre < 0 ? found | flags.BelowZero : found);
    }

    private ulong MissingPhFlag(double waterPh) => double.IsNaN(waterPh) ? flags.WaterPhMissing : 0;

    private ulong HighBufferFlag(double reading) => reading > highBufferPh ? flags.BufferHigh : 0;

    private ulong FlagsOf(LimeRemarks remarks) =>
        remarks == LimeRemarks.None
            ? 0
            : (remarks.HasFlag(LimeRemarks.Interpolated) ? flags.Interpolated : 0)
                | (remarks.HasFlag(LimeRemarks.CellMarked) ? flags.CellMarked : 0)
                | (remarks.HasFlag(LimeRemarks.RuleGap) ? flags.RuleGap : 0)
                | (remarks.HasFlag(LimeRemarks.CapacityOutside) ? flags.CapacityOutside : 0)
                | (remarks.HasFlag(LimeRemarks.NeedOutside) ? flags.NeedOutside : 0);

    private static RowStatus StatusOf(LimeStop stop) =>
        stop switch
        {
            LimeStop.None => RowStatus.Answered,
            LimeStop.AtTarget or LimeStop.WithinMargin or LimeStop.AboveTable => RowStatus.NoneNeeded,
            LimeStop.WaterPhMissing or LimeStop.ReadingMissing => RowStatus.Missing,
            _ => RowStatus.OutsideDomain,
        };
}
