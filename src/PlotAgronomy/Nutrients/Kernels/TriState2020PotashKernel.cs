using System.Runtime.Intrinsics;

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
        BuildUps(Vector256.Create(test), Vector256.Create(capacity)).ToScalar();

    public double Replaced(double test, double capacity) =>
        Replacements(Vector256.Create(test), Vector256.Create(capacity)).ToScalar();

    public double Rate(double test, double capacity) =>
        Rates(Vector256.Create(test), Vector256.Create(capacity)).ToScalar();

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        SystemMath.YearlyRate(BuildUps(test, capacity), Replacements(test, capacity), Vector256.Create(Cap));

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;

    private Vector256<double> BuildUps(Vector256<double> test, Vector256<double> capacity) =>
        SystemMath.TriStatePotashBuildUp(
            test,
            ByCapacity(capacity, OnSand.Critical, OnLoam.Critical),
            Vector256.Create(FactorBase),
            Vector256.Create(FactorPerCapacity),
            capacity
        );

    private Vector256<double> Replacements(Vector256<double> test, Vector256<double> capacity)
    {
        var limit = ByCapacity(capacity, OnSand.Limit, OnLoam.Limit);
        var (removed, extra) = (Vector256.Create(Removed), Vector256.Create(Extra));
        return IsTapered
            ? SystemMath.TriState2020Taper(
                test,
                ByCapacity(capacity, OnSand.Critical, OnLoam.Critical),
                limit,
                removed,
                extra
            )
            : SystemMath.TriState2020Replacement(test, limit, removed, extra);
    }

    private Vector256<double> ByCapacity(Vector256<double> capacity, double onSand, double onLoam) =>
        Vector256.ConditionalSelect(
            Vector256.LessThanOrEqual(capacity, Vector256.Create(CapacityLimit)),
            Vector256.Create(onSand),
            Vector256.Create(onLoam)
        );
}
