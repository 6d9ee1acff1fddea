namespace PlotAgronomy.Fertilizers;

/// <summary>A product whose packages are not whole at a node, and lower bounds of the cost with fewer and with more of
/// them.</summary>
/// <param name="Product">Index of the product; -1 when every count is whole or the node holds nothing better.</param>
/// <param name="WholeBelow">The whole number of packages below.</param>
/// <param name="CostOfFewer">Bound of the cost with at most that many; infinite when impossible.</param>
/// <param name="CostOfMore">Bound of the cost with more than that; infinite when impossible.</param>
internal readonly record struct PackageBranch(int Product, int WholeBelow, double CostOfFewer, double CostOfMore)
{
    internal static PackageBranch None => new(-1, 0, 0, 0);
}
