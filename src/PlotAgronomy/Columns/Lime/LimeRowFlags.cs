using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>The flags that the rows of one lime column may have: a bit for each finding that this method can raise for a row to
/// this target.</summary>
internal sealed class LimeRowFlags
{
    private const string OfRow = "of the row";
    private const string RowReading = "The row's reading";

    private readonly List<Finding> findings = [];
    private readonly Dictionary<LimeRemarks, ulong> byRemark = [];
    private readonly Finding? refusal;
    private readonly ulong[] byStop = new ulong[Enum.GetValues<LimeStop>().Length];

    internal LimeRowFlags(LimeMethod method, double targetPh, SoilClass soilClass, SoilBuffer? buffer)
    {
        var formula = method.Formula;
        Impossible = Bit(FindingCatalog.Create(ColumnCodes.ValueImpossible, ("limits", PossibleValues(formula))));
        if (buffer is { } ran)
        {
            (string, string)[] pair = [("water", "The row's water pH"), ("buffer", $"its buffer pH ({SoilWords.For(ran)})")];
            Swapped = Bit(FindingCatalog.Create(SoilCodes.PhBufferSwapped, pair));
            Contradictory = Bit(FindingCatalog.Create(SoilCodes.PhBufferContradict, pair));
        }

        WaterPhMissing = Bit(FindingCatalog.Create(formula.NeedsWaterPh ? LimingCodes.PhMissingRequired : LimingCodes.PhMissing));
        byStop[(int)LimeStop.WaterPhMissing] = WaterPhMissing;
        byStop[(int)LimeStop.ReadingMissing] = Bit(LimeMethodChecks.NoReading(method));
        foreach (var stop in Enum.GetValues<LimeStop>().Where(s => MayStop(method, targetPh, soilClass, s)))
        {
            if (LimeMethodChecks.ReasonOf(stop, method, soilClass, OfRow, RowReading, targetPh) is { } reason)
            {
                byStop[(int)stop] = Bit(reason);
            }
        }

        if (LimeMethodChecks.HighBufferPh(method) < double.PositiveInfinity)
        {
            BufferHigh = Bit(FindingCatalog.Create(LimingCodes.BufferHigh, ("reading", "the row")));
        }

        BelowZero = Bit(FindingCatalog.Create(LimingCodes.NegativeMeansNone, ("raw", "less than 0")));
        if (!formula.SaysWhyNoRate)
        {
            (string, string)[] cell =
            [
                ("method", method.Name),
                ("reading", "the row's reading"),
                ("target", LimeText.Ph(targetPh)),
            ];
            NoRate = Bit(FindingCatalog.Create(LimingCodes.CellBlank, cell));
        }

        refusal = formula.Refusal(OfRow, targetPh);
        AddRemarks(method);
        Findings = RowFindings.InOrder([.. findings]);
    }

    /// <summary>What the bits stand for.</summary>
    internal RowFindings Findings { get; }

    internal ulong Impossible { get; }

    internal ulong Swapped { get; }

    internal ulong Contradictory { get; }

    internal ulong WaterPhMissing { get; }

    internal ulong BufferHigh { get; }

    internal ulong BelowZero { get; }

    /// <summary>The table prints none there.</summary>
    internal ulong NoRate { get; }

    internal ulong Of(LimeStop stop) => byStop[(int)stop];

    /// <summary>The flags of all remarks at once.</summary>
    internal ulong Of(LimeRemarks remarks) =>
        byRemark.Where(r => remarks.HasFlag(r.Key)).Aggregate(0UL, (all, r) => all | r.Value);

    /// <summary>A formula that needs no water pH and still does not hold lacks the pH for such readings.</summary>
    internal RowStatus StatusOf(LimeStop stop) =>
        stop switch
        {
            LimeStop.None => RowStatus.Answered,
            LimeStop.AtTarget or LimeStop.WithinMargin or LimeStop.AboveTable => RowStatus.NoneNeeded,
            LimeStop.WaterPhMissing or LimeStop.ReadingMissing => RowStatus.Missing,
            LimeStop.Formula when refusal?.Code == LimingCodes.PhMissingRequired => RowStatus.Missing,
            _ => RowStatus.OutsideDomain,
        };

    private void AddRemarks(LimeMethod method)
    {
        var name = ("method", method.Name);
        var capacity = ("limit", Amounts.Print(AdamsEvans.HighestCapacity, 0));
        var need = ("limit", Amounts.Print(AdamsEvans.HighestNeed, 0));
        Add(LimeRemarks.Interpolated, () => FindingCatalog.Create(LimingCodes.Interpolated));
        Add(LimeRemarks.CellMarked, () => method.Formula.CellFinding is { } code ? FindingCatalog.Create(code) : null);
        Add(LimeRemarks.RuleGap, () => FindingCatalog.Create(LimingCodes.RuleGap, name, ("reading", "the row's")));
        Add(
            LimeRemarks.CapacityOutside,
            () => FindingCatalog.Create(LimingCodes.CecOutside, name, ("cec", "the row"), capacity)
        );
        Add(
            LimeRemarks.NeedOutside,
            () => FindingCatalog.Create(LimingCodes.NeedAboveDomain, name, ("need", $"{need.Item2} or more"), need)
        );

        void Add(LimeRemarks remark, Func<Finding?> make)
        {
            if (method.Formula.MayRemark.HasFlag(remark) && make() is { } finding)
            {
                byRemark[remark] = Bit(finding);
            }
        }
    }

    private static bool MayStop(LimeMethod method, double targetPh, SoilClass soilClass, LimeStop stop) =>
        stop switch
        {
            LimeStop.WithinMargin => method.NoLimeWithinPh is not null,
            LimeStop.Soil => !method.Soils.Contains(soilClass),
            LimeStop.Target => !method.Formula.Offers(targetPh),
            LimeStop.WaterPhTooHigh => method.OnlyBelowWaterPh is not null,
            LimeStop.AboveTable => method.NoLimeAboveHighest,
            _ => true,
        };

    private static string PossibleValues(LimeFormula formula)
    {
        const string ph = "a pH lies above 0 and at most at 14";
        var (_, most) = formula.PossibleReadings;
        return formula.ReadsPh ? ph
            : most < double.MaxValue ? $"{ph}, a {formula.Reads} at most at {Amounts.Print(most, 0)}"
            : $"{ph}, no other reading below 0";
    }

    private ulong Bit(Finding finding)
    {
        int bit = findings.FindIndex(f => f.Code == finding.Code);
        if (bit < 0)
        {
            bit = findings.Count;
            findings.Add(finding);
        }

        return 1UL << bit;
    }
}
