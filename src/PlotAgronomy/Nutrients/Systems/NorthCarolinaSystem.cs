using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>rate = a I^2 - b I + c, held at zero from the first zero on; printed advice is the rate plus or minus 10
/// lb/ac.</summary>
internal sealed class NorthCarolinaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Lazy<IReadOnlyDictionary<(CropRow, SoilClass, PlantNutrient), PrintedRow>> Rows = Table.Keyed(
        "Nutrients/Data/nc-rows.csv",
        r => (r.Choice<CropRow>("crop"), r.Choice<SoilClass>("soil_class"), r.Choice<PlantNutrient>("nutrient")),
        PrintedRow.FromRow
    );

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        var row = RowFor(question, reading);
        double rate = row.Kernel.Rate(reading.Value, 0);
        return new Need(question, reading, row, rate);
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user) =>
        user.Use(RowFor(question, reading).Kernel);

    private static PrintedRow RowFor(SystemRequest question, DomainReading reading) =>
        Rows.Value[(question.Crop.Row, question.SoilClass ?? SoilClass.Mineral, reading.Nutrient)];

    private sealed record PrintedRow(NorthCarolinaEquation Equation, double Range, Origin Origin)
    {
        internal CurveNeedKernel Kernel { get; } = Equation.Kernel(Range);

        internal static PrintedRow FromRow(CsvRow row)
        {
            var equation = NorthCarolinaEquation.Find(row.Integer("equation"));
            return equation.IsPerAcre
                ? new(equation, row.Number("printed_range_lb_per_ac"), row.Origin())
                : throw row.Problem("equation", "gives no pounds per acre");
        }
    }

    private sealed class Need(SystemRequest question, DomainReading reading, PrintedRow row, double rate)
        : NutrientNeed(question, reading.Nutrient, rate, row.Origin.Status)
    {
        public override string Why =>
            Pounds == 0
                ? $"{reading.Subject} is at or beyond {reading.Limit(row.Equation.StopsAt, 1)}, where the state's equation "
                    + $"{Number} ends, so none is needed."
                : $"{reading.Subject} is {Rating?.Name ?? "not rated"}; by the state's equation {Number} for "
                    + $"{SoilWords.For(Question.SoilClass ?? SoilClass.Mineral)} soil this much is due, give or take "
                    + $"{Amounts.Print(row.Range, 4)} lb/ac.";

        public override ImmutableArray<Source> Sources =>
            [.. row.Equation.Origin.Sources.Concat(row.Origin.Sources).Distinct()];

        public override NutrientRating? Rating =>
            Question.System.RatingOn(reading, Question.System.PrintedScale(reading, Question.Crop.Row));

        internal override ImmutableArray<Finding> Findings
        {
            get
            {
                var findings = ImmutableArray.CreateBuilder<Finding>();
                if (Question.SoilClass is null)
                {
                    findings.Add(FindingCatalog.Create(NutrientCodes.SoilClassAssumed, ("system", Question.System.Name)));
                }

                if (row.Kernel.Remarks(reading.Value, 0, Pounds) == NeedRemarks.CurveTurnsUp)
                {
                    findings.Add(
                        FindingCatalog.Create(
                            NutrientCodes.CurveTurnsUp,
                            ("system", Question.System.Name),
                            ("nutrient", SoilWords.For(reading.Nutrient)),
                            ("equation", Number),
                            ("index", Amounts.Print(reading.Value, 4)),
                            ("raw", Amounts.Print(Raw, 1)),
                            ("zero", Amounts.Print(row.Equation.StopsAt, 1))
                        )
                    );
                }

                return findings.ToImmutable();
            }
        }

        private protected override double Low(double rate) => row.Kernel.Low(reading.Value, rate);

        private protected override double High(double rate) => row.Kernel.High(reading.Value, rate);

        private double Pounds => Rate.PoundsPerAcre;

        private string Number => Amounts.Print(row.Equation.Number, 0);

        /// <summary>What the curve gives beyond its end too.</summary>
        private double Raw => row.Kernel.Raw(reading.Value);

        internal override ImmutableArray<WorkedLine> Work() =>
            [
                Pounds == Raw
                    ? CurveLine()
                    : TableEnd.Line(
                        reading,
                        Math.Round(row.Equation.StopsAt, 1, MidpointRounding.AwayFromZero),
                        row.Equation.Origin
                    ),
            ];

        private WorkedLine CurveLine() =>
            NutrientFormulas
                .All["nc-index-curve"]
                .Line(
                    NutrientFormulas.PerAcre(Pounds),
                    ("nutrient", SoilWords.For(reading.Nutrient)),
                    ("a", NutrientFormulas.Number(row.Equation.A)),
                    ("b", NutrientFormulas.Number(row.Equation.B)),
                    ("c", NutrientFormulas.Number(row.Equation.C)),
                    ("index", NutrientFormulas.Number(reading.Value))
                );
    }
}
