using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Columns;

/// <summary>Rows of a column of needs beside what the system itself says of each: the system is the check, whose own checks lie in
/// Nutrients.</summary>
internal sealed record NeedCalls(NeedColumn Column, PlotSoil Soil, Extractant Extractant, SoilTestUnit Unit, PrintedForm Form)
{
    internal static NeedCalls Of(RecommendationSystem system, PlantNutrient nutrient, CropUse crop, PlotSoil soil, Extractant extractant, SoilTestUnit unit, PrintedForm form = PrintedForm.Element) =>
        new(
            nutrient == PlantNutrient.Phosphate
                ? NeedColumn.ForPhosphate(system, crop, extractant, unit, soil, form)
                : NeedColumn.ForPotash(system, crop, extractant, unit, soil, form),
            soil, extractant, unit, form);

    /// <summary>How the rows differ from the calls; at most five differences.</summary>
    internal List<string> Differences(double[] reading, double[] capacity)
    {
        int rows = reading.Length;
        var (rates, low, high) = (new double[rows], new double[rows], new double[rows]);
        var (status, again) = (new RowStatus[rows], new RowStatus[rows]);
        var (flags, flagsAgain) = (new ulong[rows], new ulong[rows]);
        double[] handed = Column.ReadsExchangeCapacity ? capacity : [];
        Column.Rates(reading, handed, rates, status, flags);
        Column.Ranges(reading, handed, low, high, again, flagsAgain);
        Assert.Equal(status, again);
        Assert.Equal(flags, flagsAgain);
        var differences = new List<string>();
        for (int i = 0; i < rows && differences.Count < 5; i++)
        {
            var (wanted, findings) = Call(reading[i], capacity[i]);
            var found = new Row(rates[i], low[i], high[i], status[i]);
            string[] codes = [.. Column.RowFindings.In(flags[i]).Select(f => f.Code).Where(c => !c.StartsWith("column-", StringComparison.Ordinal))];
            string[] wantedCodes = [.. Column.RowFindings.Codes.Where(findings.Contains)];
            if (!wanted.SameBitsAs(found) || !codes.SequenceEqual(wantedCodes))
            {
                differences.Add($"{Column} {Extractant} {Unit} {Form}, {reading[i]:R}, capacity {capacity[i]:R}: wanted {wanted} {string.Join(' ', wantedCodes)}, found {found} {string.Join(' ', codes)}");
            }
        }

        return differences;
    }

    private (Row Row, HashSet<string> Codes) Call(double reading, double capacity)
    {
        SoilReading? printed;
        PlotSoil soil;
        try
        {
            var analyte = Column.Nutrient == PlantNutrient.Phosphate ? SoilAnalyte.Phosphorus : SoilAnalyte.Potassium;
            printed = double.IsNaN(reading) ? null : SoilReading.FromPrinted(analyte, reading, Unit, Extractant, Form);
            soil = Column.ReadsExchangeCapacity && !double.IsNaN(capacity) ? Soil with { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(capacity) } : Soil;
        }
        catch (ArgumentOutOfRangeException)
        {
            return (Row.Nothing(RowStatus.Implausible), []);
        }

        if (printed is null || (Column.ReadsExchangeCapacity && double.IsNaN(capacity)))
        {
            return (Row.Nothing(RowStatus.Missing), []);
        }

        var answer = Column.System.Recommend(soil.ReportedBy(soil.Report with { Readings = [printed] }), Column.Crop);
        HashSet<string> codes = [.. answer.FindingsOn(Column.Nutrient).Select(f => f.Code)];
        if (answer.For(Column.Nutrient) is { } need)
        {
            double rate = need.Rate.PoundsPerAcre;
            return (new(rate, need.PublishedLow.PoundsPerAcre, need.PublishedHigh.PoundsPerAcre, rate == 0 ? RowStatus.NoneNeeded : RowStatus.Answered), codes);
        }

        return (Row.Nothing(answer.Unanswered.Single(u => u.Nutrient == Column.Nutrient).LacksFact ? RowStatus.Missing : RowStatus.OutsideDomain), codes);
    }

    private sealed record Row(double Rate, double Low, double High, RowStatus Status)
    {
        internal static Row Nothing(RowStatus status) => new(double.NaN, double.NaN, double.NaN, status);

        internal bool SameBitsAs(Row other) => Status == other.Status && Same(Rate, other.Rate) && Same(Low, other.Low) && Same(High, other.High);

        /// <summary>Bit for bit, but for what a NaN carries.</summary>
        private static bool Same(double a, double b) => BitConverter.DoubleToInt64Bits(a) == BitConverter.DoubleToInt64Bits(b) || (double.IsNaN(a) && double.IsNaN(b));
    }
}
