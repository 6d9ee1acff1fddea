namespace PlotAgronomy.Planning;

/// <summary>What makes two purchases one: the name, the package and the price.</summary>
/// <param name="Name">Name on the shelf.</param>
/// <param name="PackagePounds">Weight of a package in lb.</param>
/// <param name="IsWhole">Whether it is sold in whole packages.</param>
/// <param name="Price">Price of a package.</param>
internal sealed record ProductKey(string Name, double PackagePounds, bool IsWhole, decimal Price)
{
    internal static ProductKey Of<T>(string name, Offer<T> offer)
        where T : class => new(name, offer.Package.Pounds, offer.Package.IsWhole, offer.Price);
}
