using System.Collections.Immutable;
using System.Text;
using PlotAgronomy.Fertilizers;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>Fertilizer that was spread.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record FertilizerEntry : BookEntry
{
    internal const string Word = "fertilizer";

    /// <summary>Gets the product.</summary>
    public required FertilizerProduct Product
    {
        get;
        init => field = Guard.NotNull(value, nameof(Product));
    }

    /// <summary>Gets the loads that were spread.</summary>
    public required ImmutableArray<SpreadLoad> Loads
    {
        get;
        init => field = SpreadLoad.AtLeastOne(value, nameof(Loads));
    }

    /// <summary>Gets the weight of all its loads.</summary>
    public Mass Weight => SpreadLoad.WeightOf(Loads);

    internal override string What => Word;

    /// <inheritdoc/>
    protected override bool PrintMembers(StringBuilder builder) => base.PrintMembers(builder);

    internal override void Write(FieldWriter to)
    {
        to.Text("product", Product.Name);
        to.Text(
            "analysis",
            string.Join(
                '-',
                Enum.GetValues<PlantNutrient>().Where(n => (int)n < 3 || Product.Analysis.Percent(n) > 0).Select(Stated)
            )
        );
        to.Choice<FertilizerSubstance>("substance", Product.Substance, FertilizerWords.Substances);
        to.Quantity("density", Product.LiquidDensity is { } density ? density.PoundsPerCubicFoot : null, "lb/ft3");
        foreach (var load in Loads)
        {
            load.Write(to.Part());
        }
    }

    internal static FertilizerEntry Read(FieldReader from, DateOnly on, string plot)
    {
        string name = from.Text("product");
        from.Text("analysis");
        var analysis = from.Made("analysis", FertilizerAnalysis.FromGrade)!;
        var substance = from.ChoiceOrNull("substance", FertilizerWords.Substances);
        double? density = from.QuantityOrNull("density", "lb/ft3");
        return new()
        {
            On = on,
            Plot = plot,
            Product = from.Try("product", () =>
                density is { } known
                    ? FertilizerProduct.Liquid(name, analysis, Density.FromPoundsPerCubicFoot(known), substance)
                    : FertilizerProduct.Create(name, analysis, substance)
            ),
            Loads = [.. from.Parts.Select(SpreadLoad.Read)],
        };
    }

    private string Stated(PlantNutrient nutrient) =>
        ExactText.Of(Product.Analysis.Percent(nutrient)) + ((int)nutrient < 3 ? "" : PlantNutrients.Symbols[nutrient]);
}
