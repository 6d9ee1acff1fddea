using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>How much manure meets a need, between a rich and a poor lot, and what else comes with it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ManureRate : IWorkedResult
{
    private readonly Fraction available;

    internal ManureRate(
        Manure manure,
        ApplicationRate need,
        PlantNutrient basis,
        Fraction available,
        ManureRateEnd rich,
        ManureRateEnd poor
    ) => (Manure, Need, Basis, this.available, RichLot, PoorLot) = (manure, need, basis, available, rich, poor);

    /// <summary>Gets the manure.</summary>
    public Manure Manure { get; }

    /// <summary>Gets the need it is sized by.</summary>
    public ApplicationRate Need { get; }

    /// <summary>Gets the nutrient it is sized by: nitrogen or phosphate.</summary>
    public PlantNutrient Basis { get; }

    /// <summary>Gets the rate when the lot is at the rich end of its range: the smaller one.</summary>
    public ManureRateEnd RichLot { get; }

    /// <summary>Gets the rate when the lot is at the poor end: the larger one.</summary>
    public ManureRateEnd PoorLot { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Manure.Origin.Sources;

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Basis == PlantNutrient.Nitrogen
            ?
            [
                AvailableLine(Manure.Nitrogen.High, RichLot),
                Line("Rich lot", RichLot),
                AvailableLine(Manure.Nitrogen.Low, PoorLot),
                Line("Poor lot", PoorLot),
            ]
            : [Line("Rich lot", RichLot), Line("Poor lot", PoorLot)];

    private WorkedLine AvailableLine(double totalPounds, ManureRateEnd end) =>
        FertilizerFormulas
            .All["manure-nitrogen-available"]
            .Line(
                $"{Amounts.Print(end.PoundsPerTon, 2)} lb/ton",
                ("total nitrogen", $"{Amounts.Print(totalPounds, 2)} lb/ton"),
                ("part available", Amounts.Print(available.Value, 3))
            )
            .From(Manure.Origin);

    private WorkedLine Line(string label, ManureRateEnd end) =>
        FertilizerFormulas
            .All["manure-rate"]
            .Line(
                $"{Amounts.Print(end.Rate, "ton/ac", 3)}; brings N {Amounts.Print(end.AvailableNitrogen, decimals: 1)}, P2O5 "
                    + $"{Amounts.Print(end.Phosphate, decimals: 1)}, K2O {Amounts.Print(end.Potash, decimals: 1)}",
                ("lot", $"{label} for {PlantNutrients.Symbols[Basis]}"),
                ("need", Amounts.Print(Need, decimals: 2)),
                ("available in a ton", $"{Amounts.Print(end.PoundsPerTon, 2)} lb/ton")
            )
            .From(Manure.Origin);

    private IEnumerable<Finding> Remarks()
    {
        yield return FindingCatalog.Create(FertilizerCodes.ManureVaries);
        if (Basis == PlantNutrient.Nitrogen && PoorLot.Phosphate.PoundsPerAcre > Need.PoundsPerAcre)
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.ManurePhosphate,
                ("phosphate", Amounts.Print(PoorLot.Phosphate, decimals: 0))
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
