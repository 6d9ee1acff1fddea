namespace PlotAgronomy.Nutrients;

/// <summary>Tri-State 2020: build-up below the critical level, removal below the limit.</summary>
internal readonly struct TriState2020PhosphateKernel : IBuildUpKernel
{
    internal required double Critical { get; init; }

    internal required double Limit { get; init; }

    internal required double Factor { get; init; }

    internal required double Removed { get; init; }

    public bool ReadsCapacity => false;

    public double Cap => double.PositiveInfinity;

    public NeedRemarks Raises => NeedRemarks.None;

    public double BuildUp(double test, double capacity) => SystemMath.LinearBuildUp(test, Critical, Factor);

    public double Replaced(double test, double capacity) => SystemMath.TriState2020Replacement(test, Limit, Removed, 0);

    public double Rate(double test, double capacity) => SystemMath.YearlyRate(BuildUp(test, 0), Replaced(test, 0), Cap);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;
}
