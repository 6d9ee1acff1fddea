namespace PlotAgronomy.Liming;

/// <summary>One figure for each meq of acidity; to the field target at least the least rate below a limit.</summary>
internal readonly struct PennsylvaniaLimeKernel : ILimeKernel
{
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

    /// <summary>The least rate goes to a soil below its target only, so that its pH must be known.</summary>
    public bool Holds(double reading, double waterPh) => IsHighTarget || !(double.IsNaN(waterPh) && reading < Limit);
}
