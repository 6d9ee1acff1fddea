namespace PlotAgronomy.Liming;

/// <summary>One figure for each meq of acidity; to the field target at least the least rate below a limit.</summary>
internal readonly struct PennsylvaniaLimeKernel : ILimeKernel
{
    public static bool IsTotal => true;

    internal required bool IsHighTarget { get; init; }

    internal required double PerMeq { get; init; }

    internal required double Limit { get; init; }

    internal required double Least { get; init; }

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = !IsHighTarget && reading == Limit ? LimeRemarks.RuleGap : LimeRemarks.None;
        return IsHighTarget
            ? LimeMath.PennsylvaniaHighPoundsPerAcre(reading, PerMeq)
            : LimeMath.PennsylvaniaFieldPoundsPerAcre(reading, PerMeq, Limit, Least);
    }
}
