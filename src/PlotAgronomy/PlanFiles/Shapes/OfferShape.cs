using UnitsNet;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>Something on offer in packages.</summary>
internal abstract class OfferShape<T>(string name, string meaning) : PlanShape<Offer<T>>(name, meaning)
    where T : class
{
    private PlanField<Mass>? package;
    private PlanField<decimal>? price;

    /// <summary>Declares the package and its price.</summary>
    /// <param name="example">Example of a package.</param>
    /// <param name="size">What the package is.</param>
    /// <param name="cost">What the price is.</param>
    protected void Packed(
        string example,
        string size = "Package size.",
        string cost = "Price of one package in the plan's currency."
    )
    {
        package = Required("package", Mass(example), size, o => o.Package.Weight);
        price = Required("price", NumberTo<decimal>("price-high"), cost, o => o.Price);
        Unsaid("goods in bulk or by the pound", o => !o.Package.IsWhole);
        Unsaid("a package sold by volume", o => o.Package.Volume is not null);
    }

    protected Mass WeightOf(PlanPart at) => at.Get(package!);

    protected Offer<T> InBags(PlanPart at, T item) => at.Try(price!, () => Offer.InBags(item, WeightOf(at), at.Get(price!)));
}
