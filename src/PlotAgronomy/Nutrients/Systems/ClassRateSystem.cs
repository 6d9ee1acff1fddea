using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A printed rate, or range of rates, for each class of the system's own scale.</summary>
internal sealed class ClassRateSystem(string id) : RecommendationSystem(id)
{
    private static readonly Lazy<ILookup<(string System, CropRow Crop, PlantNutrient Nutrient), ClassRate>> Rates = Table.Grouped(
        "Nutrients/Data/class-rates.csv",
        r => (r.Text("system"), r.Choice<CropRow>("crop"), r.Choice<PlantNutrient>("nutrient")),
        r => new ClassRate(
            r.Text("scale"),
            r.Integer("class_order"),
            r.Number("rate_low"),
            r.Number("rate_high"),
            r.Choice<ClassRateUnit>("rate_unit"),
            r.SourceId(),
            r.Status()
        )
    );

    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        if (Id == "IA-2013" && reading.Nutrient == PlantNutrient.Potash && question.Setting.SampleMoisture is null)
        {
            return Refuse(
                reading.Nutrient,
                question,
                "nutrient-fact-missing",
                "its potassium classes differ for field-moist and for dried samples"
            );
        }

        var rates = Rates.Value[(Id, question.Crop.Row, reading.Nutrient)];
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
                "nutrient-beyond-printed-table",
                $"{reading.Words} lies above the last class it prints, where the rate is none already"
            );
        }

        if (rates.FirstOrDefault(r => r.ScaleId == scale.Id && r.Order == rating.Class.Order) is not { } row)
        {
            return Refuse(
                reading.Nutrient,
                question,
                "nutrient-rates-not-held",
                $"{rating}: for a {scale.Scope} only the classes are in this library, not the rates",
                rating
            );
        }

        if (row.Unit == ClassRateUnit.PoundsPerTonOfYield && question.Crop.Yield is null)
        {
            return Refuse(
                reading.Nutrient,
                question,
                "nutrient-fact-missing",
                $"{rating}; its rate is for each ton of yield hoped for, and no yield is assumed",
                rating
            );
        }

        return NeedFrom(question, reading, rating, row);
    }

    private NutrientNeed NeedFrom(SystemQuestion question, DomainReading reading, NutrientRating rating, ClassRate row)
    {
        double yield = question.Crop.Yield?.PerAcre ?? 0;
        var low = row.ToRate(row.Low, yield);
        bool isRange = row.High > row.Low;
        bool isMaximum = row.Unit == ClassRateUnit.KilogramsPerHectare;
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (isMaximum)
        {
            findings.Add(FindingCatalog.Create("nutrient-legal-maximum", ("system", Name)));
        }

        if (isRange)
        {
            findings.Add(
                FindingCatalog.Create(
                    "nutrient-range-only",
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
                    "nutrient-maintenance-printed",
                    ("system", Name),
                    ("rate", Amounts.Print(low, decimals: 1)),
                    ("nutrient", SoilWords.For(reading.Nutrient))
                )
            );
        }

        string here = row.Unit == ClassRateUnit.PoundsPerTonOfYield ? $", here {question.Crop.Yield}" : "";
        return new NutrientNeed
        {
            Nutrient = reading.Nutrient,
            Rate = low,
            PublishedLow = low,
            PublishedHigh = row.ToRate(row.High, yield),
            IsLegalMaximum = isMaximum,
            Rating = rating,
            Why =
                $"{reading.Subject} is {rating.Verdict}; for this class the table prints {row.Words} on "
                + $"{CropRows.WordsFor(question.Crop.Row)}{here}.",
            Status = Statuses.WeakestOf(rating.Status, row.Status),
            SourceIds = [.. row.SourceId.Split(';').Concat(rating.SourceIds).Distinct(StringComparer.Ordinal)],
            Findings = findings.ToImmutable(),
            Work = () =>
                [
                    new(
                        SoilWords.For(reading.Nutrient),
                        $"rate printed for class {rating.Name}",
                        row.WorkFor(yield),
                        row.SourceId.Split(';')[0]
                    ),
                ],
        };
    }

    private enum ClassRateUnit
    {
        PoundsPerAcre,
        KilogramsPerHectare,
        PoundsPerTonOfYield,
    }

    private sealed record ClassRate(
        string ScaleId,
        int Order,
        double Low,
        double High,
        ClassRateUnit Unit,
        string SourceId,
        DataStatus Status
    )
    {
        internal string Words =>
            (High > Low ? $"{Amounts.Print(Low, 4)} to {Amounts.Print(High, 4)}" : Amounts.Print(Low, 4))
            + Unit switch
            {
                ClassRateUnit.PoundsPerAcre => " lb/ac",
                ClassRateUnit.KilogramsPerHectare => " kg/ha at most",
                _ => " lb for each ton",
            };

        internal ApplicationRate ToRate(double printed, double yield) =>
            Unit switch
            {
                ClassRateUnit.KilogramsPerHectare => ApplicationRate.FromKilogramsPerHectare(printed),
                ClassRateUnit.PoundsPerTonOfYield => ApplicationRate.FromPoundsPerAcre(printed * yield),
                _ => ApplicationRate.FromPoundsPerAcre(printed),
            };

        internal string WorkFor(double yield) =>
            Unit switch
            {
                ClassRateUnit.PoundsPerTonOfYield => string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Low} to {High} lb/ton x {yield:0.###} ton/ac = {Low * yield:0.0} to {High * yield:0.0} lb/ac"
                ),
                ClassRateUnit.KilogramsPerHectare => string.Create(
                    CultureInfo.InvariantCulture,
                    $"at most {Low} kg/ha = {ToRate(Low, yield).PoundsPerAcre:0.0} lb/ac"
                ),
                _ => string.Create(CultureInfo.InvariantCulture, $"{Low} lb/ac"),
            };
    }
}
