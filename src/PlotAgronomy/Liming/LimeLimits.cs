namespace PlotAgronomy.Liming;

/// <summary>The limits of what this room accepts, checked once at its edge.</summary>
internal static class LimeLimits
{
    internal static double LowestTargetPh => LimingConstants.All["lowest-target-ph"];

    internal static double HighestTargetPh => LimingConstants.All["highest-target-ph"];

    private static double DeepestInches => LimingConstants.All["deepest-soil"];

    internal static double TargetPh(double ph, string name) => Guard.Between(ph, LowestTargetPh, HighestTargetPh, "pH", name);

    internal static double Depth(double inches, string name) => Guard.AboveUpTo(inches, 0, DeepestInches, "in", name);
}
