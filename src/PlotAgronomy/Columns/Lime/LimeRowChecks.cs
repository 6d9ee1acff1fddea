using System.Runtime.CompilerServices;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>What is checked in every row of a lime column, and what it comes to as status and flags
/// (<see cref="RowCode"/>).</summary>
internal sealed class LimeRowChecks
{
    private const ulong TellsMissingPh = RowCode.FirstMark;
    private const ulong TellsHighBuffer = RowCode.SecondMark;

    private readonly LimeStops stops;
    private readonly PhPairRule pair;
    private readonly bool readsBuffer;
    private readonly bool isTextureRead;
    private readonly double leastReading;
    private readonly double mostReading;
    private readonly double highBufferPh;
    private readonly ulong[] codeOfStop;
    private readonly (ulong Remark, ulong Flag)[] flagOfRemark;
    private readonly ulong impossible;
    private readonly ulong swapped;
    private readonly ulong contradictory;
    private readonly ulong noRate;
    private readonly ulong noneNeeded;
    private readonly ulong belowZero;
    private readonly ulong missingPh;
    private readonly ulong highBuffer;

    internal LimeRowChecks(LimeMethod method, double targetPh, SoilClass soilClass, SoilTexture? texture, SoilBuffer? buffer)
    {
        stops = new(method, soilClass, targetPh);
        pair = buffer is { } ran ? PhPairRule.For(ran) : default;
        readsBuffer = buffer is not null;
        isTextureRead = method.Formula.TakesTexture(texture);
        (leastReading, mostReading) = method.Formula.PossibleReadings;
        highBufferPh = LimeMethodChecks.HighBufferPh(method);
        var flags = new LimeRowFlags(method, targetPh, soilClass, buffer);
        Findings = flags.Findings;
        codeOfStop = Array.ConvertAll(Enum.GetValues<LimeStop>(), stop => CodeOf(stop, flags));
        flagOfRemark =
        [
            .. Enum.GetValues<LimeRemarks>().Select(r => ((ulong)r, flags.Of(r))).Where(pair => pair.Item2 != 0),
        ];
        impossible = RowCode.Of(RowStatus.Implausible, flags.Impossible);
        swapped = RowCode.Of(RowStatus.Implausible, flags.Swapped);
        contradictory = RowCode.Of(RowStatus.Implausible, flags.Contradictory);
        noRate = RowCode.Of(RowStatus.OutsideDomain, flags.NoRate);
        noneNeeded = RowCode.Of(RowStatus.NoneNeeded, 0);
        (belowZero, missingPh, highBuffer) = (flags.BelowZero, flags.WaterPhMissing, flags.BufferHigh);
    }

    internal RowFindings Findings { get; }

    /// <summary>Codes of rows before their sum: a row that nothing stops counts as answered.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Stops<T>(T waterPh, T reading)
        where T : unmanaged, ILanes<T>
    {
        var code = stops.Of(waterPh, isTextureRead ? reading : T.Of(double.NaN), codeOfStop);
        code = RowCode.Add(code, TellsMissingPh, T.IsUnknown(waterPh), missingPh);
        code = RowCode.Add(code, TellsHighBuffer, reading > T.Of(highBufferPh), highBuffer);
        if (readsBuffer)
        {
            code = T.When(pair.Contradicts(waterPh, reading), T.OfBits(contradictory), code);
            code = T.When(pair.LooksSwapped(waterPh, reading), T.OfBits(swapped), code);
        }

        var cannotBe =
            (waterPh <= T.Of(0))
            | (waterPh > T.Of(PhScale.Highest))
            | (reading < T.Of(leastReading))
            | (reading > T.Of(mostReading));
        return T.When(cannotBe, T.OfBits(impossible), code);
    }

    /// <summary>The flags of what was noticed in sums.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T FlagsOf<T>(T remarks)
        where T : unmanaged, ILanes<T>
    {
        var flags = T.OfBits(0);
        foreach (var (remark, flag) in flagOfRemark)
        {
            flags |= T.HasBits(remarks & T.OfBits(remark), T.OfBits(remark)) & T.OfBits(flag);
        }

        return flags;
    }

    /// <summary>Joins codes and sums: rates, and the codes with what the sum adds. The sum of a stopped row is not looked
    /// at.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (T Rates, T Codes) Answer<T>(T code, T poundsPerAcre)
        where T : unmanaged, ILanes<T>
    {
        var zero = T.Of(0);
        var added = ~(poundsPerAcre > zero) & T.OfBits(noneNeeded);
        added |= (poundsPerAcre < zero) & T.OfBits(belowZero);
        added = T.When(T.IsUnknown(poundsPerAcre), T.OfBits(noRate), added);
        code |= added & RowCode.Is(code, RowStatus.Answered);
        var none = T.When(RowCode.Is(code, RowStatus.NoneNeeded), zero, T.Of(double.NaN));
        return (T.When(RowCode.Is(code, RowStatus.Answered), poundsPerAcre, none), code);
    }

    private static ulong CodeOf(LimeStop stop, LimeRowFlags flags) =>
        RowCode.Of(flags.StatusOf(stop), flags.Of(stop))
        | (
            stop is LimeStop.Soil or LimeStop.Target or LimeStop.AtTarget or LimeStop.WithinMargin or LimeStop.WaterPhMissing
                ? 0
                : TellsMissingPh
        )
        | (stop is LimeStop.None or LimeStop.ReadingOutside or LimeStop.AboveTable ? TellsHighBuffer : 0);
}
