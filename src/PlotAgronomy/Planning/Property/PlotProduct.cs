namespace PlotAgronomy.Planning;

/// <summary>What a plot takes of one product.</summary>
/// <param name="Key">What it is.</param>
/// <param name="Package">Package.</param>
/// <param name="Pounds">What the plot takes of it.</param>
/// <param name="Available">Packages there are; null where there is no end.</param>
internal sealed record PlotProduct(ProductKey Key, Package Package, double Pounds, int? Available);
