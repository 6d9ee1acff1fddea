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
            r.SourceId()
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
        double pounds = cell.Nitrogen - cut;
        var rate = ApplicationRate.FromPoundsPerAcre(pounds);
        string less = isCut ? $"; on Piedmont soil it is {Amounts.Print(cut, 4)} lb/ac less" : "";
        string minus = isCut ? $" - {Amounts.Print(cut, 4)}" : "";
        yield return new NutrientNeed
        {
            Nutrient = PlantNutrient.Nitrogen,
            Rate = rate,
            PublishedLow = rate,
            PublishedHigh = rate,
            Why = $"Every cell of the printed grid for {CropRows.WordsFor(question.Crop.Row)} gives the same nitrogen{less}.",
            Status = DataStatus.Read,
            SourceIds = [cell.SourceId],
            Work = () =>
                [
                    new(
                        "N",
                        "printed in every cell",
                        $"{Amounts.Print(cell.Nitrogen, 4)}{minus} = {Amounts.Print(pounds, 4)} lb/ac",
                        cell.SourceId
                    ),
                ],
        };
    }

    private SystemAnswer PotashBy(SystemQuestion question, DomainReading reading)
    {
        var rating = reading.RatingOn(RatingTables.Find("SC-K"), Id)!;
        var column = Cells(question.Crop.Row).Where(c => c.Key.K == rating.Name).Select(c => c.Value).ToList();
        double share = ShareLeftBySubsoil(question.Setting.SubsoilPotassium);
        string cut = share < 1 ? $", cut to {Amounts.Print(share * 100, 0)} % for what the subsoil holds" : "";
        string why =
            $"{reading.Subject} is {rating.Name}, and that column of the printed grid for "
            + $"{CropRows.WordsFor(question.Crop.Row)} gives this rate{cut}.";
        return NeedFrom(
            question,
            reading,
            rating,
            column[0].Potash * share,
            column[0],
            why,
            rating.Status,
            share < 1 ? $"printed cell {Amounts.Print(column[0].Potash, 0)} x {Amounts.Print(share, 2)}" : "printed cell"
        );
    }

    /// <summary>Part of the topsoil potash still advised: all, three quarters or half, as the subsoil is low, medium or above.
    /// Source SOIL-SC5.</summary>
    private static double ShareLeftBySubsoil(SoilReading? subsoil)
    {
        if (subsoil is null)
        {
            return 1;
        }

        var report = new SoilReport { Laboratory = "subsoil", Readings = [subsoil] };
        var (_, value) = ReportReadings.Find(report, SoilAnalyte.Potassium, [Extractant.Mehlich1], SoilTestUnit.PoundsPerAcre)
            ?? throw new ArgumentException(
                $"Subsoil potassium must be by Mehlich-1 in lb/ac or ppm, found {subsoil}.",
                nameof(subsoil)
            );
        return RatingTables.Find("SC-K").ClassOf(value)!.Order switch
        {
            1 => 1,
            2 => 1 - NutrientConstants.All["SC-subsoil-medium-cut"],
            _ => 1 - NutrientConstants.All["SC-subsoil-high-cut"],
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
                "nutrient-fact-missing",
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
                "nutrient-fact-missing",
                "in this row of the grid the phosphate depends on the rating of potassium, which the report does not hold"
            )
            : NeedFrom(
                question,
                reading,
                null,
                cells[0].Phosphate,
                cells[0],
                $"The laboratory rates phosphorus {printed}, and that row of the printed grid for "
                    + $"{CropRows.WordsFor(question.Crop.Row)} gives this rate.",
                DataStatus.Read
            );
    }

    private NutrientNeed NeedFrom(
        SystemQuestion question,
        DomainReading reading,
        NutrientRating? rating,
        double pounds,
        Cell cell,
        string why,
        DataStatus status,
        string numbers = "printed cell"
    ) =>
        SufficiencyNeed.Of(
            reading,
            pounds,
            rating,
            why,
            status,
            [cell.SourceId, .. rating?.SourceIds ?? []],
            $"grid of {CropRows.WordsFor(question.Crop.Row)}",
            numbers,
            cell.BreaksThePattern && reading.Nutrient == PlantNutrient.Phosphate
                ? [FindingCatalog.Create("nutrient-grid-breaks-pattern", ("system", Name), ("rate", Amounts.Print(pounds, 4)))]
                : []
        );

    private static IEnumerable<KeyValuePair<(CropRow Crop, string P, string K), Cell>> Cells(CropRow crop) =>
        Grid.Value.Where(c => c.Key.Item1 == crop);

    private sealed record Cell(double Nitrogen, double Phosphate, double Potash, bool BreaksThePattern, string SourceId);
}
