namespace PlotAgronomy.Liming;

/// <summary>Adams and Evans to one target.</summary>
internal readonly struct AdamsEvansLimeKernel : ILimeKernel
{
    public static bool IsTotal => true;

    internal required double AcidityPerPh { get; init; }

    internal required double StartPh { get; init; }

    internal required double PhConstant { get; init; }

    internal required double PhLinear { get; init; }

    internal required double PhSquare { get; init; }

    internal required double TonsPerMeq { get; init; }

    internal required double AcidShareAtTarget { get; init; }

    internal required double HighestCapacity { get; init; }

    internal required double HighestNeed { get; init; }

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        double share = LimeMath.AdamsEvansAcidShare(waterPh, PhConstant, PhLinear, PhSquare);
        double acidity = LimeMath.AdamsEvansAcidity(reading, StartPh, AcidityPerPh);
        double capacity = LimeMath.AdamsEvansCapacity(acidity, share);
        double tons = LimeMath.AdamsEvansTonsPerAcre(capacity, share, AcidShareAtTarget, TonsPerMeq);
        remarks =
            capacity >= HighestCapacity ? LimeRemarks.CapacityOutside
            : tons >= HighestNeed ? LimeRemarks.NeedOutside
            : LimeRemarks.None;
        return capacity < HighestCapacity && tons < HighestNeed ? tons * ExactUnits.PoundsPerShortTon : double.NaN;
    }
}
