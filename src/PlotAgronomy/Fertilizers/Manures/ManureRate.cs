using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>How much manure meets a need, between a rich and a poor lot, and what else comes with it.</summary>
public sealed class ManureRate : IWorkedResult
{
    internal ManureRate(Manure manure, ApplicationRate need, string basis, ManureRateEnd rich, ManureRateEnd poor) =>
        (Manure, Need, Basis, RichLot, PoorLot) = (manure, need, basis, rich, poor);

    /// <summary>Gets the manure.</summary>
    public Manure Manure { get; }

    /// <summary>Gets the need it is sized by.</summary>
    public ApplicationRate Need { get; }

    /// <summary>Gets the nutrient it is sized by: <c>N</c> or <c>P2O5</c>.</summary>
    public string Basis { get; }

    /// <summary>Gets the rate when the lot is at the rich end of its range: the smaller one.</summary>
    public ManureRateEnd RichLot { get; }

    /// <summary>Gets the rate when the lot is at the poor end: the larger one.</summary>
    public ManureRateEnd PoorLot { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => [Manure.SourceId];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [Line("Rich lot", RichLot), Line("Poor lot", PoorLot)];

    private WorkedLine Line(string label, ManureRateEnd end) =>
        FertilizerFormulas
            .All["manure-rate"]
            .Line(
                $"{Amounts.Print(end.Rate, "ton/ac", 3)}; brings N {Amounts.Print(end.AvailableNitrogen, decimals: 1)}, P2O5 "
                    + $"{Amounts.Print(end.Phosphate, decimals: 1)}, K2O {Amounts.Print(end.Potash, decimals: 1)}",
                ("lot", $"{label} for {Basis}"),
                ("need", Amounts.Print(Need, decimals: 2)),
                ("available in a ton", $"{Amounts.Print(end.PoundsPerTon, 2)} lb/ton")
            ) with
        {
            SourceId = Manure.SourceId,
            Status = Manure.Status,
        };

    private IEnumerable<Finding> Remarks()
    {
        yield return FindingCatalog.Create(FertilizerCodes.ManureVaries);
        if (Basis == "N" && PoorLot.Phosphate.PoundsPerAcre > Need.PoundsPerAcre)
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.ManurePhosphate,
                ("phosphate", Amounts.Print(PoorLot.Phosphate, decimals: 0))
            );
        }
    }
}
