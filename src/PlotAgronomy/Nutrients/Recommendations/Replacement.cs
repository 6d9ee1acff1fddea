namespace PlotAgronomy.Nutrients;

/// <summary>What a build-up system puts back for what leaves the plot: nothing for a browsed plot.</summary>
internal readonly record struct Replacement(double Pounds, DataStatus Status, Origin? Origin)
{
    private static readonly Replacement Nothing = new(0, DataStatus.Read, null);

    internal bool IsCarriedOff => Origin is not null;

    /// <summary>End of a sentence on what happens with the crop.</summary>
    internal string PutBack =>
        IsCarriedOff ? "what is carried off is put back" : "nothing is carried off, so nothing is put back";

    /// <summary>The system's own figure for a unit of yield, and the yield; null where the pounds were stated.</summary>
    private (CropRemovalFigure Figure, double PerUnit, double Yield)? Printed { get; init; }

    /// <summary>The removal to put back, or null when the crop is carried off and neither system nor caller says how much
    /// leaves.</summary>
    internal static Replacement? For(string systemId, CropUse crop, PlantNutrient nutrient)
    {
        if (!crop.IsCarriedOff || crop.StatedRemovalOf(nutrient) is { PoundsPerAcre: 0 })
        {
            return Nothing;
        }

        if (crop.StatedRemovalOf(nutrient) is { } stated)
        {
            var row = NutrientFormulas.All["removal-stated"];
            return new Replacement(stated.PoundsPerAcre, row.Origin!.Status, row.Origin);
        }

        if (CropRemovalFigure.Find(systemId, crop.Row) is not { } figure || crop.Yield is not { } yield)
        {
            return null;
        }

        double perUnit = figure.PerUnit(nutrient);
        double pounds = SystemMath.ByYield(perUnit, yield.PerAcre);
        return new Replacement(pounds, figure.Origin.Status, figure.Origin) { Printed = (figure, perUnit, yield.PerAcre) };
    }

    internal WorkedLine Line(string nutrient)
    {
        if (!IsCarriedOff)
        {
            return NutrientFormulas
                .All["nothing-carried-off"]
                .Line(NutrientFormulas.PerAcre(0), ("what", $"{nutrient} replacement"));
        }

        return Printed is not { } printed
            ? NutrientFormulas.All["removal-stated"].Line(NutrientFormulas.PerAcre(Pounds), ("nutrient", nutrient))
            : NutrientFormulas
                .All["system-removal"]
                .Line(
                    NutrientFormulas.PerAcre(Pounds),
                    ("nutrient", nutrient),
                    ("yield", NutrientFormulas.Number(printed.Yield)),
                    ("removal per unit", NutrientFormulas.Number(printed.PerUnit))
                )
                .From(printed.Figure.Origin.FirstSource);
    }
}
