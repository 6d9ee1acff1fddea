namespace PlotAgronomy.Fertilizers;

/// <summary>What a search for whole packages found.</summary>
internal sealed class PackageAnswer
{
    /// <summary>Gets the packages of each product; null when no set was found.</summary>
    internal int[]? Packages { get; init; }

    /// <summary>Gets the cost of the set found, infinite when none was.</summary>
    internal double Cost { get; init; } = double.PositiveInfinity;

    /// <summary>Gets a cost that no set can undercut; infinite when no set exists.</summary>
    internal double LowerBound { get; init; }

    /// <summary>Gets the number of linear programs solved.</summary>
    internal int Nodes { get; init; }

    /// <summary>Gets a value indicating whether the search came to its end: the set is cheapest, or none exists.</summary>
    internal bool IsProven { get; init; }
}
