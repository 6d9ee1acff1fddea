namespace PlotAgronomy.Nutrients;

/// <summary>Straight lines between printed points; the last point's rate above it.</summary>
internal readonly struct PointNeedKernel : INeedKernel
{
    internal required (double Test, double Rate)[] Points { get; init; }

    public bool ReadsCapacity => false;

    public bool HasRange => false;

    public NeedRemarks Raises => NeedRemarks.None;

    public double Rate(double test, double capacity) => SystemMath.BetweenPoints(test, Points);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;
}
