using PlotAgronomy.Columns;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Columns;

/// <summary>One row of a lime column, asked of the method itself.</summary>
internal static class LimeRow
{
    /// <summary>What a column does not flag: it concerns the error of a reading, a rounding, another target, or earlier lime.</summary>
    private static readonly string[] OnlyTheCallSays = [LimingCodes.RangeOpen, LimingCodes.SmallNeed, LimingCodes.LowerTargetNeedsMore];

    private static readonly string[] Implausible = [SoilCodes.PhBufferSwapped, SoilCodes.PhBufferContradict];

    /// <summary>The report that holds a row's values; a value that cannot be is refused.</summary>
    internal static SoilReport Report(LimeMethod method, double waterPh, double reading, SoilBuffer? buffer, SoilClass? soilClass, SoilTexture? texture)
    {
        bool isRead = !double.IsNaN(reading) && !method.Formula.ReadsWaterPh;
        bool isAcidity = isRead && method.Formula is PennsylvaniaFormula or TurfFormula or WoodruffFormula;
        return new()
        {
            Laboratory = "test laboratory",
            WaterPh = double.IsNaN(waterPh) ? null : WaterPh.FromValue(waterPh),
            BufferPhs = isRead && buffer is { } ran ? [BufferPh.FromValue(reading, ran)] : [],
            ExchangeableAcidity = isRead && isAcidity ? CationCharge.FromMilliequivalentsPer100Grams(reading) : null,
            LimeBufferCapacity = isRead && method.Formula is GeorgiaFormula ? LimeBufferCapacity.AtEquilibrium(reading) : null,
            Readings = isRead && method.Formula is VermontFormula
                ? [SoilReading.FromPrinted(SoilAnalyte.Aluminum, reading, SoilTestUnit.PartsPerMillion, Extractant.ModifiedMorgan)] : [],
            SoilClass = soilClass,
            Texture = texture,
        };
    }

    /// <summary>The method's answer; null where a value of the row cannot be.</summary>
    internal static LimeNeed? Call(LimeColumn column, SoilClass? soilClass, SoilTexture? texture, double waterPh, double reading)
    {
        try
        {
            return column.Method.NeedFor(Report(column.Method, waterPh, reading, column.Buffer, soilClass, texture), column.TargetPh);
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    internal static (double[] Rates, RowStatus[] Status, ulong[] Flags) Answers(LimeColumn column, double[] waterPh, double[] reading)
    {
        double[] rates = new double[waterPh.Length];
        var status = new RowStatus[waterPh.Length];
        ulong[] flags = new ulong[waterPh.Length];
        column.Rates(waterPh, column.ReadsWaterPh ? [] : reading, rates, status, flags);
        return (rates, status, flags);
    }

    /// <summary>Whether the method answers for a row as the column says: rate to the last bit, status, and codes.</summary>
    internal static string? Difference(LimeColumn column, LimeNeed? need, double rate, RowStatus status, ulong flags)
    {
        string[] codes = [.. column.RowFindings.In(flags).Select(f => f.Code)];
        if (need is null)
        {
            return status == RowStatus.Implausible && double.IsNaN(rate) && codes is ["column-value-impossible"] ? null : "a value that cannot be was used";
        }

        string[] ofAll = [.. column.Findings.Select(f => f.Code)];
        string[] said = [.. need.Findings.Select(f => f.Code).Except(ofAll).Except(OnlyTheCallSays).Distinct()];
        if (said.Intersect(Implausible).Any())
        {
            return status == RowStatus.Implausible && double.IsNaN(rate) && codes is [var one] && said.Contains(one) ? null : "a contradiction was used";
        }

        var expected = need.Rate is not { } due ? (need.Stop is LimeStop.WaterPhMissing or LimeStop.ReadingMissing || said.Contains(LimingCodes.PhMissingRequired) ? RowStatus.Missing : RowStatus.OutsideDomain)
            : due.OfBasis == ApplicationRate.Zero ? RowStatus.NoneNeeded
            : RowStatus.Answered;
        double pounds = need.Rate?.OfBasis.PoundsPerAcre ?? double.NaN;
        return BitConverter.DoubleToInt64Bits(pounds) != BitConverter.DoubleToInt64Bits(rate) ? $"the call gives {pounds:R}, the column {rate:R}"
            : status != expected ? $"the call means {expected}, the column {status}"
            : !codes.Order(StringComparer.Ordinal).SequenceEqual(said.Order(StringComparer.Ordinal)) ? $"the call says {string.Join(", ", said)}; the column {string.Join(", ", codes)}"
            : null;
    }
}
