namespace PlotAgronomy.Nutrients;

/// <summary>What a build-up system puts back for what leaves the plot: nothing for a browsed plot.</summary>
internal sealed record Replacement(double Pounds, DataStatus Status, string? SourceId, Func<string, WorkedLine> Line)
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
            return new Replacement(0, DataStatus.Read, null, name =>
                NutrientFormulas.All["nothing-carried-off"].Line(NutrientFormulas.PerAcre(0), ("what", $"{name} replacement"))
            );
        }

        if (crop.StatedRemovalOf(nutrient) is { } stated)
        {
            var row = NutrientFormulas.All["removal-stated"];
            return new Replacement(stated.PoundsPerAcre, row.Origin!.Status, row.Origin.SourceId, name =>
                row.Line(NutrientFormulas.PerAcre(stated.PoundsPerAcre), ("nutrient", name))
            );
        }

        if (CropRemovalFigure.Find(systemId, crop.Row) is not { } figure || crop.Yield is not { } yield)
        {
            return null;
        }

        double perUnit = figure.PerUnit(nutrient);
        double pounds = SystemMath.ByYield(perUnit, yield.PerAcre);
        return new Replacement(pounds, figure.Origin.Status, figure.Origin.SourceId, name =>
            NutrientFormulas
                .All["system-removal"]
                .Line(
                    NutrientFormulas.PerAcre(pounds),
                    ("nutrient", name),
                    ("yield", NutrientFormulas.Number(yield.PerAcre)),
                    ("removal per unit", NutrientFormulas.Number(perUnit))
                )
                .From(figure.Origin.FirstSource)
        );
    }
}
