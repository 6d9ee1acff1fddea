namespace PlotAgronomy.Planning;

/// <summary>What a purchase is beside the cheapest.</summary>
internal enum RunnerUp
{
    NextCheapest,
    FewestProducts,
}
