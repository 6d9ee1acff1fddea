namespace PlotAgronomy.Liming;

/// <summary>How a material's figure in an index was reckoned; no line where its label states the figure itself.</summary>
internal static class LimeFigureLines
{
    internal static IEnumerable<WorkedLine> Of(LimingMaterial material, LimeIndex index)
    {
        if (material.StatedFigures.FirstOrDefault(f => f.Index == index) is { } stated)
        {
            return stated.PoundsEqualToOneTon is { } pounds ? [LabelLine(stated, pounds)] : [];
        }

        return material is { IsPureCarbonate: false, Neutralizes: true, CcePercent: { } equivalent }
            ?
            [
                .. index.Bands.Select(b => BandLine(b, material.Sieves!).From(index.Origin)),
                FigureLine(material, equivalent, index).From(index.Origin),
            ]
            : [];
    }

    private static WorkedLine LabelLine(LimeFigure figure, double pounds) =>
        LimingFormulas
            .All["nc-label-figure"]
            .Line(
                $"{figure}",
                ("lb in a ton", Amounts.Print(ExactUnits.PoundsPerShortTon, 0)),
                ("lb equal to a ton of standard lime", Amounts.Print(pounds, 1))
            );

    private static WorkedLine BandLine(LimeIndexBand band, SieveAnalysis sieves)
    {
        double passing = band.PassingMesh is int coarse ? sieves.SharePassing(coarse).Value : 1;
        double finer = band.HeldOnMesh is int fine ? sieves.SharePassing(fine).Value : 0;
        string from = band.PassingMesh is int mesh ? $"passing {Amounts.Print(mesh, 0)} mesh" : "coarsest";
        string to = band.HeldOnMesh is int held ? $", held on {Amounts.Print(held, 0)}" : "";
        return LimingFormulas
            .All["lime-fineness-band"]
            .Line(
                Amounts.Print(LimeStrength.FinenessOfBand(band.Factor, passing, finer), 4),
                ("band", from + to),
                ("factor", Amounts.Print(band.Factor, 3)),
                ("share passing", Amounts.Print(passing, 3)),
                ("share passing the finer sieve", Amounts.Print(finer, 3))
            );
    }

    private static WorkedLine FigureLine(LimingMaterial material, double equivalent, LimeIndex index) =>
        LimingFormulas
            .All["lime-figure"]
            .Line(
                $"{material.FigureIn(index)}",
                ("calcium carbonate equivalent", Amounts.Print(equivalent, 2)),
                ("fineness", Amounts.Print(index.Sieves.IsEmpty ? 1 : index.FinenessShare(material.Sieves!), 4)),
                ("dry matter", Amounts.Print(index.CountsMoisture ? 1 - material.Moisture.Value : 1, 3)),
                ("whole of the index", Amounts.Print(index.Whole, 0))
            );
}
