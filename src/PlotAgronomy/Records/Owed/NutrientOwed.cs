using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Records;

/// <summary>One nutrient of a plot since its need was stated.</summary>
/// <param name="Nutrient">Nutrient.</param>
/// <param name="Need">What was asked for; null where it was not.</param>
/// <param name="Spread">What was spread since.</param>
/// <param name="Acres">Area of the plot.</param>
internal sealed record NutrientOwed(
    PlantNutrient Nutrient,
    ApplicationRate? Need,
    ImmutableArray<FertilizerEntry> Spread,
    double Acres
)
{
    internal static readonly ImmutableArray<PlantNutrient> Counted =
    [
        PlantNutrient.Nitrogen,
        PlantNutrient.Phosphate,
        PlantNutrient.Potash,
    ];

    internal NutrientBalance Balance =>
        new()
        {
            Nutrient = Nutrient,
            AtLeast = Need ?? ApplicationRate.Zero,
            AtMost = null,
            Delivered = ApplicationRate.FromPoundsPerAcre(Spread.Sum(Brought)),
            IsAsked = Need is not null,
        };

    internal static NutrientOwed Of(PlotBook book, string plot, double acres, DateOnly on, PlantNutrient nutrient)
    {
        var needs = book.Of<NeedEntry>(plot).Where(n => n.On <= on).ToList();
        var stated = needs.LastOrDefault(n => n.Of(nutrient) is not null);
        var since = (stated ?? needs.LastOrDefault())?.On ?? DateOnly.MinValue;
        return new(
            nutrient,
            stated?.Of(nutrient),
            [.. book.Of<FertilizerEntry>(plot).Where(f => f.On >= since && f.On <= on && Percent(f, nutrient) > 0)],
            acres
        );
    }

    internal IEnumerable<WorkedLine> Lines() =>
        Spread.Select(f =>
            RecordFormulas
                .All["record-nutrient-brought"]
                .Line(
                    $"{Amounts.Print(Brought(f), 1)} lb/ac",
                    ("nutrient", PlantNutrients.Symbols[Nutrient]),
                    ("product", f.Product.Name),
                    ("weight", Amounts.Print(f.Weight, "lb", 1)),
                    ("percent", Amounts.Print(Percent(f, Nutrient), 2)),
                    ("area", Amounts.Print(Acres, 3))
                )
        );

    private static double Percent(FertilizerEntry spread, PlantNutrient nutrient) => spread.Product.Counted.Percent(nutrient);

    private double Brought(FertilizerEntry spread)
    {
        double pounds = spread.Weight.Pounds;
        return RecordMath.Brought(pounds, Percent(spread, Nutrient), Acres);
    }
}
