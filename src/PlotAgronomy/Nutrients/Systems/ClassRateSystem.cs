using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A printed rate, or range of rates, for each class of the system's own scale.</summary>
internal sealed class ClassRateSystem(SystemRecord record) : RecommendationSystem(record)
{
    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        if (question.Setting.SampleMoisture is null && AsksForMoisture(reading))
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                "its potassium classes differ for field-moist and for dried samples"
            );
        }

        var rates = ClassRate.For(Id, question.Crop.Row, reading.Nutrient);
        var scale = RatingTables
            .Of(Id)
            .First(s =>
                s.Analyte == reading.Reading.Analyte
                && ReportReadings.IsAccepted(reading.Reading.Extractant, s.Extractants)
                && s.Condition switch
                {
                    ScaleCondition.FieldMoist => question.Setting.SampleMoisture == SampleMoisture.FieldMoist,
                    ScaleCondition.Dried => question.Setting.SampleMoisture == SampleMoisture.Dried,
                    _ => true,
                }
            );
        if (reading.RatingOn(scale, Id) is not { } rating)
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.BeyondPrintedTable,
                $"{reading.Words} lies above the last class it prints, where the rate is none already"
            );
        }

        if (rates.FirstOrDefault(r => r.ScaleId == scale.Id && r.Order == rating.Class.Order) is not { } row)
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.RatesNotHeld,
                $"{rating}: for a {scale.Scope} only the classes are in this library, not the rates",
                rating
            );
        }

        if (row.AsksForYield && question.Crop.Yield is null)
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                $"{rating}; its rate is for each ton of yield hoped for, and no yield is assumed",
                rating
            );
        }

        return NeedFrom(question, reading, rating, row);
    }

    private bool AsksForMoisture(DomainReading reading) =>
        RatingTables
            .Of(Id)
            .Any(s => s.Analyte == reading.Reading.Analyte && s.Condition is (ScaleCondition.FieldMoist or ScaleCondition.Dried));

    private NutrientNeed NeedFrom(SystemQuestion question, DomainReading reading, NutrientRating rating, ClassRate row)
    {
        double yield = question.Crop.Yield?.PerAcre ?? 0;
        var low = row.ToRate(row.Low, yield);
        bool isRange = row.High > row.Low;
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (row.IsLegalMaximum)
        {
            findings.Add(FindingCatalog.Create(NutrientCodes.LegalMaximum, ("system", Name)));
        }

        if (isRange)
        {
            findings.Add(
                FindingCatalog.Create(
                    NutrientCodes.RangeOnly,
                    ("system", Name),
                    ("low", Amounts.Print(low, decimals: 1)),
                    ("high", Amounts.Print(row.ToRate(row.High, yield), decimals: 1))
                )
            );
        }

        if (
            Philosophy == SystemPhilosophy.BuildUpAndMaintenance
            && rating.Name == "optimum"
            && !question.Crop.IsCarriedOff
            && row.Low > 0
        )
        {
            findings.Add(
                FindingCatalog.Create(
                    NutrientCodes.MaintenancePrinted,
                    ("system", Name),
                    ("rate", Amounts.Print(low, decimals: 1)),
                    ("nutrient", SoilWords.For(reading.Nutrient))
                )
            );
        }

        string here = row.AsksForYield ? $", here {question.Crop.Yield}" : "";
        return new NutrientNeed
        {
            Nutrient = reading.Nutrient,
            Rate = low,
            PublishedLow = low,
            PublishedHigh = row.ToRate(row.High, yield),
            IsLegalMaximum = row.IsLegalMaximum,
            Rating = rating,
            Why =
                $"{reading.Subject} is {rating.Verdict}; for this class the table prints {row.Words} on "
                + $"{CropRows.WordsFor(question.Crop.Row)}{here}.",
            Status = Statuses.WeakestOf(rating.Status, row.Origin.Status),
            SourceIds = [.. row.Origin.SourceIds.Concat(rating.SourceIds).Distinct(StringComparer.Ordinal)],
            Findings = findings.ToImmutable(),
            Work = () => [row.Line(reading.Nutrient, rating.Name, yield)],
        };
    }
}
