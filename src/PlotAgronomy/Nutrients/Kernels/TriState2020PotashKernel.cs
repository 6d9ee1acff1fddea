namespace PlotAgronomy.Nutrients;

/// <summary>Tri-State 2020: two sets of levels parted by the exchange capacity, pounds a ppm that grow with it.</summary>
internal readonly struct TriState2020PotashKernel : IBuildUpKernel
{
    internal required double CapacityLimit { get; init; }

    /// <summary>Critical level and limit up to the limit of the capacity.</summary>
    internal required (double Critical, double Limit) OnSand { get; init; }

    /// <summary>Critical level and limit above it.</summary>
    internal required (double Critical, double Limit) OnLoam { get; init; }

    internal required double FactorBase { get; init; }

    internal required double FactorPerCapacity { get; init; }

    internal required double Removed { get; init; }

    internal required double Extra { get; init; }

    /// <summary>Whether less than removal is put back the nearer the test is to the limit.</summary>
    internal required bool IsTapered { get; init; }

    public bool ReadsCapacity => true;

    public double Cap => double.PositiveInfinity;

    public NeedRemarks Raises => NeedRemarks.None;

    public double BuildUp(double test, double capacity) =>
        SystemMath.TriStatePotashBuildUp(test, Critical(capacity), FactorBase, FactorPerCapacity, capacity);

    public double Replaced(double test, double capacity) =>
        IsTapered
            ? SystemMath.TriState2020Taper(test, Critical(capacity), Limit(capacity), Removed, Extra)
            : SystemMath.TriState2020Replacement(test, Limit(capacity), Removed, Extra);

    public double Rate(double test, double capacity) =>
        SystemMath.YearlyRate(BuildUp(test, capacity), Replaced(test, capacity), Cap);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;

    private double Critical(double capacity) => capacity <= CapacityLimit ? OnSand.Critical : OnLoam.Critical;

    private double Limit(double capacity) => capacity <= CapacityLimit ? OnSand.Limit : OnLoam.Limit;
}
