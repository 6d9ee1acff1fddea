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
        Basis == PlantNutrient.Phosphate && available.Value >= 1
            ? [Line("Rich lot", RichLot), Line("Poor lot", PoorLot)]
            :
            [
                AvailableLine(Total.High, RichLot),
                Line("Rich lot", RichLot),
                AvailableLine(Total.Low, PoorLot),
                Line("Poor lot", PoorLot),
            ];

    private PoundsPerTonRange Total => Basis == PlantNutrient.Nitrogen ? Manure.Nitrogen : Manure.Phosphate;

    private WorkedLine AvailableLine(double totalPounds, ManureRateEnd end)
    {
        string counted = $"{Amounts.Print(end.PoundsPerTon, 2)} lb/ton",
            total = $"{Amounts.Print(totalPounds, 2)} lb/ton",
            part = Amounts.Print(available.Value, 3);
        var line =
            Basis == PlantNutrient.Nitrogen
                ? FertilizerFormulas
                    .All["manure-nitrogen-available"]
                    .Line(counted, ("total nitrogen", total), ("part available", part))
                : FertilizerFormulas
                    .All["manure-phosphate-available"]
                    .Line(counted, ("total phosphate", total), ("part that counts", part));
        return line.From(Manure.Origin);
    }

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
