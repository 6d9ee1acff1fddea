using UnitsNet;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>Something on offer in packages.</summary>
internal abstract class OfferShape<T>(string name, string meaning) : PlanShape<Offer<T>>(name, meaning)
    where T : class
{
    private PlanField<PackageSize>? package;
    private PlanField<decimal>? price;
    private PlanField<int>? available;

    /// <summary>Declares the package and its price.</summary>
    /// <param name="example">Example of a package.</param>
    /// <param name="size">What the package is.</param>
    /// <param name="cost">What the price is.</param>
    protected void Packed(
        string example,
        string size = "Package size.",
        string cost = "Price of one package in the plan's currency, a plain number such as 5.75; 0 for what is already there."
    )
    {
        package = Required("package", new PlanPackage(example), size, o => new PackageSize(
            o.Package.Volume is null ? o.Package.Weight : null,
            o.Package.Volume
        ));
        price = Required("price", NumberTo<decimal>("price-high"), cost, o => o.Price);
        const string There =
            "Packages there are of it, such as those in the shed; an open bag is one package of what is left in it.";
        available = Optional("available", NumberTo<int>("available-high"), There, o => o.Available);
        Unsaid("goods in bulk or by the pound", o => !o.Package.IsWhole);
    }

    protected Mass WeightOf(PlanPart at) =>
        at.Get(package!).Weight ?? throw at.Report(package!, "a package is given by its weight here, such as '50 lb': weigh one");

    protected Offer<T> InBags(PlanPart at, T item) => At(at, () => Offer.InBags(item, WeightOf(at), at.Get(price!)));

    /// <summary>The same for what is sold by volume, where its density is known.</summary>
    protected Offer<T> InJugs(PlanPart at, T item, Density density, Volume jug) => At(at, () => new Offer<T>
    {
        Item = item,
        Package = Package.FromVolume(jug, density),
        Price = at.Get(price!),
    });

    /// <summary>The volume of a package; null where it is given by its weight.</summary>
    protected Volume? VolumeOf(PlanPart at) => at.Get(package!).Volume;

    /// <summary>Asks for what a volume must be weighed by.</summary>
    protected Exception AskDensity(PlanPart at, PlanField<Density> density) =>
        at.Report(package!, $"a volume needs its '{density.Name}', such as '11.1 lb/gal', which stands on the label");

    private Offer<T> At(PlanPart at, Func<Offer<T>> offer) =>
        at.Try(price!, () => offer() with { Available = at.Maybe(available!) });
}
