using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The printed grid of a crop: the rating of P picks the row, the rating of K the column.</summary>
internal sealed class SouthCarolinaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Lazy<FrozenDictionary<(CropRow, string P, string K), Cell>> Grid = Table.Keyed(
        "Nutrients/Data/sc-grid.csv",
        r => (r.Choice<CropRow>("crop"), r.Text("phosphorus_rating"), r.Text("potassium_rating")),
        r => new Cell(
            r.Number("nitrogen_lb_per_ac"),
            r.Number("phosphate_lb_per_ac"),
            r.Number("potash_lb_per_ac"),
            r.YesOrNo("breaks_the_pattern"),
            r.Origin()
        )
    );

    /// <summary>The printed ratings, poorest first.</summary>
    internal static ImmutableArray<string> Ratings { get; } = ["low", "medium", "sufficient", "high", "excessive"];

    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading) =>
        reading.Nutrient == PlantNutrient.Potash ? PotashBy(question, reading) : PhosphateBy(question, reading);

    private protected override IEnumerable<NutrientNeed> NeedsOfCrop(SystemQuestion question)
    {
        if (!Has(question.Crop.Row, PlantNutrient.Phosphate))
        {
            yield break;
        }

        var cell = Grid.Value[(question.Crop.Row, "low", "low")];
        bool isCut = cell.Nitrogen > 0 && question.Setting.Region == SoilRegion.Piedmont;
        double cut = isCut ? NutrientConstants.All["SC-piedmont-nitrogen-cut"] : 0;
        double pounds = SystemMath.Less(cell.Nitrogen, cut);
        var rate = ApplicationRate.FromPoundsPerAcre(pounds);
        string less = isCut ? $"; on Piedmont soil it is {Amounts.Print(cut, 4)} lb/ac less" : "";
        yield return new NutrientNeed
        {
            Nutrient = PlantNutrient.Nitrogen,
            Rate = rate,
            PublishedLow = rate,
            PublishedHigh = rate,
            Why = $"Every cell of the printed grid for {CropRows.WordsFor(question.Crop.Row)} gives the same nitrogen{less}.",
            Status = DataStatus.Read,
            SourceIds = cell.Origin.SourceIds,
            Work = () =>
                [
                    isCut
                        ? NutrientFormulas
                            .All["sc-piedmont-nitrogen"]
                            .Line(
                                NutrientFormulas.PerAcre(pounds),
                                ("nutrient", SoilWords.For(PlantNutrient.Nitrogen)),
                                ("printed in every cell", NutrientFormulas.Number(cell.Nitrogen)),
                                ("cut on Piedmont soil", NutrientFormulas.Number(cut))
                            )
                        : AsPrinted(PlantNutrient.Nitrogen, question.Crop.Row, pounds, cell),
                ],
        };
    }

    private SystemAnswer PotashBy(SystemQuestion question, DomainReading reading)
    {
        var rating = reading.RatingOn(RatingTables.Find("SC-K"), Id)!;
        var column = Cells(question.Crop.Row).Where(c => c.Key.K == rating.Name).Select(c => c.Value).ToList();
        double held = ShareOfSubsoil(question.Setting.SubsoilPotassium);
        double pounds = SystemMath.SouthCarolinaPotash(column[0].Potash, held);
        string cut = held > 0 ? $", cut to {Amounts.Print((1 - held) * 100, 0)} % for what the subsoil holds" : "";
        string why =
            $"{reading.Subject} is {rating.Name}, and that column of the printed grid for "
            + $"{CropRows.WordsFor(question.Crop.Row)} gives this rate{cut}.";
        return NeedFrom(reading, rating, pounds, column[0], why, rating.Status, () =>
            held > 0
                ? NutrientFormulas
                    .All["sc-subsoil-potash"]
                    .Line(
                        NutrientFormulas.PerAcre(pounds),
                        ("nutrient", SoilWords.For(reading.Nutrient)),
                        ("printed cell", NutrientFormulas.Number(column[0].Potash)),
                        ("share the subsoil holds", NutrientFormulas.Number(held))
                    )
                : AsPrinted(reading.Nutrient, question.Crop.Row, pounds, column[0])
        );
    }

    /// <summary>Part of the topsoil potash that the subsoil makes good: none, a quarter or half, as it is low, medium or
    /// above. Source SOIL-SC5.</summary>
    private static double ShareOfSubsoil(SoilReading? subsoil)
    {
        if (subsoil is null)
        {
            return 0;
        }

        var report = new SoilReport { Laboratory = "subsoil", Readings = [subsoil] };
        var (_, value) = ReportReadings.Find(report, SoilAnalyte.Potassium, [Extractant.Mehlich1], SoilTestUnit.PoundsPerAcre)
            ?? throw new ArgumentException(
                $"Subsoil potassium must be by Mehlich-1 in lb/ac or ppm, found {subsoil}.",
                nameof(subsoil)
            );
        return RatingTables.Find("SC-K").ClassOf(value)!.Order switch
        {
            1 => 0,
            2 => NutrientConstants.All["SC-subsoil-medium-cut"],
            _ => NutrientConstants.All["SC-subsoil-high-cut"],
        };
    }

    private SystemAnswer PhosphateBy(SystemQuestion question, DomainReading reading)
    {
        string? printed = question.Setting.PrintedPhosphorusRating?.Trim().ToLowerInvariant();
        var row = Cells(question.Crop.Row).Where(c => c.Key.P == printed).ToList();
        if (row.Count == 0)
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                "its phosphorus limits are not in this library: give the rating the laboratory printed ("
                    + string.Join(", ", Ratings)
                    + ")"
            );
        }

        var potassium = ReportReadings.Find(
            question.Report,
            SoilAnalyte.Potassium,
            [Extractant.Mehlich1],
            SoilTestUnit.PoundsPerAcre
        );
        string? column = potassium is { } found ? RatingTables.Find("SC-K").ClassOf(found.Value)!.Name : null;
        var cells = row.Where(c => column is null || c.Key.K == column).Select(c => c.Value).ToList();
        return cells.Select(c => c.Phosphate).Distinct().Count() > 1
            ? Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                "in this row of the grid the phosphate depends on the rating of potassium, which the report does not hold"
            )
            : NeedFrom(
                reading,
                null,
                cells[0].Phosphate,
                cells[0],
                $"The laboratory rates phosphorus {printed}, and that row of the printed grid for "
                    + $"{CropRows.WordsFor(question.Crop.Row)} gives this rate.",
                DataStatus.Read,
                () => AsPrinted(reading.Nutrient, question.Crop.Row, cells[0].Phosphate, cells[0])
            );
    }

    private NutrientNeed NeedFrom(
        DomainReading reading,
        NutrientRating? rating,
        double pounds,
        Cell cell,
        string why,
        DataStatus status,
        Func<WorkedLine> line
    ) =>
        SufficiencyNeed.Of(
            reading,
            pounds,
            rating,
            why,
            status,
            [.. cell.Origin.SourceIds, .. rating?.SourceIds ?? []],
            line,
            cell.BreaksThePattern && reading.Nutrient == PlantNutrient.Phosphate
                ? [FindingCatalog.Create(NutrientCodes.GridBreaksPattern, ("system", Name), ("rate", Amounts.Print(pounds, 4)))]
                : []
        );

    private static WorkedLine AsPrinted(PlantNutrient nutrient, CropRow crop, double pounds, Cell cell) =>
        NutrientFormulas
            .All["rate-as-printed"]
            .Line(NutrientFormulas.PerAcre(pounds), ("what", $"{SoilWords.For(nutrient)}, grid of {CropRows.WordsFor(crop)}"))
            .From(cell.Origin.FirstSource);

    private static IEnumerable<KeyValuePair<(CropRow Crop, string P, string K), Cell>> Cells(CropRow crop) =>
        Grid.Value.Where(c => c.Key.Item1 == crop);

    private sealed record Cell(double Nitrogen, double Phosphate, double Potash, bool BreaksThePattern, Origin Origin);
}
