using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>What is checked in every row of a lime column, four rows at once, and what it comes to as status and flags
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

    /// <summary>Codes of four rows before their sum: a row that nothing stops counts as answered.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector256<ulong> Stops(Vector256<double> waterPh, Vector256<double> reading)
    {
        var code = stops.Of(waterPh, isTextureRead ? reading : Vector256.Create(double.NaN), codeOfStop);
        code = RowCode.Add(code, TellsMissingPh, Vector256.IsNaN(waterPh), missingPh);
        code = RowCode.Add(code, TellsHighBuffer, Vector256.GreaterThan(reading, Vector256.Create(highBufferPh)), highBuffer);
        if (readsBuffer)
        {
            code = RowCode.When(pair.Contradicts(waterPh, reading), contradictory, code);
            code = RowCode.When(pair.LooksSwapped(waterPh, reading), swapped, code);
        }

        var cannotBe =
            Vector256.LessThanOrEqual(waterPh, Vector256<double>.Zero)
            | Vector256.GreaterThan(waterPh, Vector256.Create(PhScale.Highest))
            | Vector256.LessThan(reading, Vector256.Create(leastReading))
            | Vector256.GreaterThan(reading, Vector256.Create(mostReading));
        return RowCode.When(cannotBe, impossible, code);
    }

    /// <summary>The flags of what was noticed in four sums.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector256<ulong> FlagsOf(Vector256<ulong> remarks)
    {
        var flags = Vector256<ulong>.Zero;
        foreach (var (remark, flag) in flagOfRemark)
        {
            var noticed = ~Vector256.Equals(remarks & Vector256.Create(remark), Vector256<ulong>.Zero);
            flags |= noticed & Vector256.Create(flag);
        }

        return flags;
    }

    /// <summary>Joins codes and sums: rates, and the codes with what the sum adds. The sum of a stopped row is not looked
    /// at.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (Vector256<double> Rates, Vector256<ulong> Codes) Answer(Vector256<ulong> code, Vector256<double> poundsPerAcre)
    {
        var zero = Vector256<double>.Zero;
        var added = RowCode.When(~Vector256.GreaterThan(poundsPerAcre, zero), noneNeeded, Vector256<ulong>.Zero);
        added |= RowCode.When(Vector256.LessThan(poundsPerAcre, zero), belowZero, Vector256<ulong>.Zero);
        added = RowCode.When(Vector256.IsNaN(poundsPerAcre), noRate, added);
        code |= added & RowCode.Is(code, RowStatus.Answered);
        var none = Vector256.ConditionalSelect(
            RowCode.Is(code, RowStatus.NoneNeeded).AsDouble(),
            zero,
            Vector256.Create(double.NaN)
        );
        return (Vector256.ConditionalSelect(RowCode.Is(code, RowStatus.Answered).AsDouble(), poundsPerAcre, none), code);
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
