using System.Globalization;

namespace PlotAgronomy.Nutrients;

/// <summary>What a build-up system puts back for what leaves the plot: nothing for a browsed plot.</summary>
internal sealed record Replacement(double Pounds, string Words, DataStatus Status, string? SourceId)
{
    internal bool IsCarriedOff => SourceId is not null;

    /// <summary>End of a sentence on what happens with the crop.</summary>
    internal string PutBack =>
        IsCarriedOff ? "what is carried off is put back" : "nothing is carried off, so nothing is put back";

    /// <summary>The removal to put back, or null when the crop is carried off and neither system nor caller says how much
    /// leaves.</summary>
    internal static Replacement? For(string systemId, CropUse crop, PlantNutrient nutrient)
    {
        if (!crop.IsCarriedOff || crop.StatedRemovalOf(nutrient) is { PoundsPerAcre: 0 })
        {
            return new Replacement(0, "nothing is carried off", DataStatus.Read, null);
        }

        if (crop.StatedRemovalOf(nutrient) is { } stated)
        {
            return new Replacement(
                stated.PoundsPerAcre,
                $"{Amounts.Print(stated.PoundsPerAcre, 4)} stated",
                DataStatus.Practice,
                "PRACTICE"
            );
        }

        if (CropRemovalFigure.Find(systemId, crop.Row) is not { } figure || crop.Yield is not { } yield)
        {
            return null;
        }

        double perUnit = figure.PerUnit(nutrient);
        return new Replacement(
            yield.PerAcre * perUnit,
            string.Create(CultureInfo.InvariantCulture, $"{yield.PerAcre:0.###} x {perUnit}"),
            figure.Status,
            figure.SourceId
        );
    }
}
