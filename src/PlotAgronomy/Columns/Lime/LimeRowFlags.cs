using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>The flags that the rows of one lime column may have: a bit for each finding that this method can raise for a row to
/// this target.</summary>
internal sealed class LimeRowFlags
{
    private const string RowPh = "of the row";
    private const string RowReading = "The row's reading";

    private readonly List<Finding> findings = [];
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
            if (LimeMethodChecks.ReasonOf(stop, method, soilClass, RowPh, RowReading, targetPh) is { } reason)
            {
                byStop[(int)stop] = Bit(reason);
            }
        }

        if (LimeMethodChecks.HighBufferPh(method) < double.PositiveInfinity)
        {
            BufferHigh = Bit(FindingCatalog.Create(LimingCodes.BufferHigh, ("reading", RowPh)));
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

    internal ulong Interpolated { get; private set; }

    internal ulong CellMarked { get; private set; }

    internal ulong RuleGap { get; private set; }

    internal ulong CapacityOutside { get; private set; }

    internal ulong NeedOutside { get; private set; }

    internal ulong Of(LimeStop stop) => byStop[(int)stop];

    private void AddRemarks(LimeMethod method)
    {
        var may = method.Formula.MayRemark;
        var name = ("method", method.Name);
        if (may.HasFlag(LimeRemarks.Interpolated))
        {
            Interpolated = Bit(FindingCatalog.Create(LimingCodes.Interpolated));
        }

        if (method.Formula.CellFinding is { } code)
        {
            CellMarked = Bit(FindingCatalog.Create(code));
        }

        if (may.HasFlag(LimeRemarks.RuleGap))
        {
            RuleGap = Bit(FindingCatalog.Create(LimingCodes.RuleGap, name, ("reading", "the row's")));
        }

        if (may.HasFlag(LimeRemarks.CapacityOutside))
        {
            string limit = Amounts.Print(AdamsEvans.HighestCapacity, 0);
            CapacityOutside = Bit(FindingCatalog.Create(LimingCodes.CecOutside, name, ("cec", limit), ("limit", limit)));
        }

        if (may.HasFlag(LimeRemarks.NeedOutside))
        {
            string limit = Amounts.Print(AdamsEvans.HighestNeed, 0);
            NeedOutside = Bit(
                FindingCatalog.Create(LimingCodes.NeedAboveDomain, name, ("need", $"{limit} or more"), ("limit", limit))
            );
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
