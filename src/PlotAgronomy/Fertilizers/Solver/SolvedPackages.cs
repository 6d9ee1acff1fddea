namespace PlotAgronomy.Fertilizers;

/// <summary>Numbers of a plan: packages bought and spread of each product, and how sure the cost is.</summary>
internal sealed class SolvedPackages
{
    /// <summary>Part of a cost that is arithmetic dust.</summary>
    private const double CostDust = 1e-6;

    /// <summary>Gets the packages bought; parts of packages only when everything is weighed.</summary>
    internal required double[] Bought { get; init; }

    /// <summary>Gets the packages spread, whole or in part.</summary>
    internal required double[] Spread { get; init; }

    /// <summary>Gets the cost.</summary>
    internal required double Cost { get; init; }

    /// <summary>Gets a cost that no plan of this form can undercut.</summary>
    internal required double LowerBound { get; init; }

    /// <summary>Gets a value indicating whether the plan is proven cheapest.</summary>
    internal required bool IsProven { get; init; }

    /// <summary>The same set as one among several searches, which are known to find nothing below this cost.</summary>
    internal SolvedPackages BoundedBy(double lowerBound) =>
        new()
        {
            Bought = Bought,
            Spread = Spread,
            Cost = Cost,
            LowerBound = Math.Min(Cost, lowerBound),
            IsProven = lowerBound >= Cost - (CostDust * Math.Max(1, Cost)),
        };
}
