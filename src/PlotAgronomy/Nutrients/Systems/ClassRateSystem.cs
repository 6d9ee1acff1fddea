using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A printed rate, or range of rates, for each class of the system's own scale.</summary>
internal sealed class ClassRateSystem(SystemRecord record) : RecommendationSystem(record)
{
    /// <summary>The class that is held as it is.</summary>
    private const string Optimum = "optimum";

    private readonly ImmutableArray<ClassRate> rates = ClassRate.Of(record.Id);

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        if (AsksForMoisture(question, reading) && question.Report.SampleMoisture is null)
        {
            return AskFor(reading.Nutrient, question, _ =>
                "its potassium classes differ for field-moist and for dried samples"
            );
        }

        var scale = ScaleFor(question, reading);
        if (scale.ClassOf(reading.Value) is not { } found)
        {
            return BeyondTheTable(question, reading);
        }

        if (RateFor(scale, found, question.Crop.Row, reading.Nutrient) is not { } row)
        {
            return NoRate(question, reading);
        }

        return row.AsksForYield && question.Crop.Yield is null
            ? NoYield(question, reading)
            : NeedFrom(question, reading, scale, row);
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user)
    {
        var scale = ScaleFor(question, reading);
        return user.Use(
            new ClassNeedKernel
            {
                Limits = scale.Limits,
                Needs =
                [
                    .. scale.Classes.Select(c => NeedOf(question, reading, scale, c)),
                    ClassNeed.None(NeedRemarks.BeyondPrintedTable),
                ],
            }
        );
    }

    private ClassNeed NeedOf(SystemRequest question, DomainReading reading, RatingScale scale, RatingClass of)
    {
        if (RateFor(scale, of, question.Crop.Row, reading.Nutrient) is not { } row)
        {
            return ClassNeed.None(NeedRemarks.RatesNotHeld);
        }

        double yield = question.Crop.Yield?.PerAcre ?? 0;
        return new(
            row.ToRate(row.Low, yield).PoundsPerAcre,
            row.ToRate(row.High, yield).PoundsPerAcre,
            (row.IsRange ? NeedRemarks.RangeOnly : NeedRemarks.None)
                | (PutsBackNothing(question, of, row) ? NeedRemarks.MaintenancePrinted : NeedRemarks.None)
        );
    }

    /// <summary>Whether what a harvest removes is printed for a plot from which nothing leaves.</summary>
    private static bool PutsBackNothing(SystemRequest question, RatingClass of, ClassRate row) =>
        question.System.Philosophy == SystemPhilosophy.BuildUpAndMaintenance
        && of.Name == Optimum
        && !question.Crop.IsCarriedOff
        && row.Low > 0;

    private static RatingScale ScaleFor(SystemRequest question, DomainReading reading) =>
        question.System.PrintedScale(
            reading,
            question.Crop.Row,
            !AsksForMoisture(question, reading) ? ScaleCondition.None
                : question.Report.SampleMoisture == SampleMoisture.Dried ? ScaleCondition.Dried
                : ScaleCondition.FieldMoist
        );

    private static bool AsksForMoisture(SystemRequest question, DomainReading reading)
    {
        foreach (var scale in question.System.Scales)
        {
            if (scale.Analyte == reading.Reading.Analyte && scale.Condition is ScaleCondition.FieldMoist or ScaleCondition.Dried)
            {
                return true;
            }
        }

        return false;
    }

    private ClassRate? RateFor(RatingScale scale, RatingClass found, CropRow crop, PlantNutrient nutrient)
    {
        foreach (var rate in rates)
        {
            if (rate.Crop == crop && rate.Nutrient == nutrient && rate.ScaleId == scale.Id && rate.Order == found.Order)
            {
                return rate;
            }
        }

        return null;
    }

    private protected override NutrientRating? RatingOf(SystemRequest question, DomainReading reading) =>
        question.System.RatingOn(reading, ScaleFor(question, reading));

    private UnansweredNutrient BeyondTheTable(SystemRequest question, DomainReading reading) =>
        Refuse(reading.Nutrient, question, NutrientCodes.BeyondPrintedTable, _ =>
            $"{reading.Words} lies above the last class it prints, where the rate is none already"
        );

    private UnansweredNutrient NoRate(SystemRequest question, DomainReading reading) =>
        Refuse(
            reading.Nutrient,
            question,
            NutrientCodes.RatesNotHeld,
            refused =>
                $"{refused.Rating}: for a {refused.Rating!.Scale.Scope} only the classes are in this library, not the rates",
            isRated: true
        );

    private UnansweredNutrient NoYield(SystemRequest question, DomainReading reading) =>
        Refuse(
            reading.Nutrient,
            question,
            NutrientCodes.FactMissing,
            refused => $"{refused.Rating}; its rate is for each ton of yield hoped for, and no yield is assumed",
            isRated: true
        );

    private static Need NeedFrom(SystemRequest question, DomainReading reading, RatingScale scale, ClassRate row)
    {
        double low = row.ToRate(row.Low, question.Crop.Yield?.PerAcre ?? 0).PoundsPerAcre;
        var status = Statuses.WeakestOf(scale.StatusOf(scale.ClassOf(reading.Value)!), row.Origin.Status);
        return new Need(question, reading, row, low, status);
    }

    private sealed class Need(
        SystemRequest question,
        DomainReading reading,
        ClassRate row,
        double poundsPerAcre,
        DataStatus status
    ) : NutrientNeed(question, reading.Nutrient, poundsPerAcre, status)
    {
        public override string Why
        {
            get
            {
                string here = row.AsksForYield ? $", here {Question.Crop.Yield}" : "";
                return $"{reading.Subject} is {Rating.Verdict}; for this class the table prints {row.Words} on "
                    + $"{CropRows.WordsFor(Question.Crop.Row)}{here}.";
            }
        }

        public override NutrientRating Rating => Question.System.RatingOn(reading, Scale)!;

        public override ImmutableArray<Source> Sources => [.. row.Origin.Sources.Concat(Scale.Sources).Distinct()];

        internal override ImmutableArray<Finding> Findings
        {
            get
            {
                var findings = ImmutableArray.CreateBuilder<Finding>();
                if (row.IsLegalMaximum)
                {
                    findings.Add(FindingCatalog.Create(NutrientCodes.LegalMaximum, ("system", Question.System.Name)));
                }

                if (row.IsRange)
                {
                    findings.Add(
                        FindingCatalog.Create(
                            NutrientCodes.RangeOnly,
                            ("system", Question.System.Name),
                            ("low", Amounts.Print(Rate, decimals: 1)),
                            ("high", Amounts.Print(row.ToRate(row.High, Yield), decimals: 1))
                        )
                    );
                }

                if (PutsBackNothing(Question, Rating.Class, row))
                {
                    findings.Add(
                        FindingCatalog.Create(
                            NutrientCodes.MaintenancePrinted,
                            ("system", Question.System.Name),
                            ("rate", Amounts.Print(Rate, decimals: 1)),
                            ("nutrient", SoilWords.For(reading.Nutrient))
                        )
                    );
                }

                return findings.ToImmutable();
            }
        }

        public override bool IsLegalMaximum => row.IsLegalMaximum;

        private protected override double High(double rate) => row.ToRate(row.High, Yield).PoundsPerAcre;

        private RatingScale Scale => ScaleFor(Question, reading);

        private double Yield => Question.Crop.Yield?.PerAcre ?? 0;

        internal override ImmutableArray<WorkedLine> Work() => [row.Line(reading.Nutrient, Rating.Name, Yield)];
    }
}
