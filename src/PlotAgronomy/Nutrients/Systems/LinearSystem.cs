using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>constant + a x yield + b x test + c x yield x test, never negative, with the system's own limit and least
/// rate.</summary>
internal sealed class LinearSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Lazy<ILookup<(string, CropRow, PlantNutrient), Equation>> Equations = Table.Grouped(
        "Nutrients/Data/linear-equations.csv",
        r => (r.Text("system_id"), r.Choice<CropRow>("crop"), r.Choice<PlantNutrient>("nutrient")),
        r => new Equation(
            r.Choices<Extractant>("extractants"),
            r.Text("formula"),
            r.Number("constant"),
            r.Number("per_yield"),
            r.Number("per_test"),
            r.Number("per_yield_and_test"),
            r.NumberOrNull("zero_above_test"),
            r.NumberOrNull("least_rate_lb_per_ac") ?? 0,
            r.SourceId(),
            r.Status()
        )
    );

    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        var equation = Equations
            .Value[(Id, question.Crop.Row, reading.Nutrient)]
            .First(e => ReportReadings.IsAccepted(reading.Reading.Extractant, e.Extractants));
        if (equation.AsksForYield && question.Crop.Yield is null)
        {
            return Refuse(
                reading.Nutrient,
                question,
                NutrientCodes.FactMissing,
                "its equation asks for the yield hoped for, and none is assumed"
            );
        }

        double yield = question.Crop.Yield?.PerAcre ?? 0;
        double raw = SystemMath.Linear(
            equation.Constant,
            equation.PerYield,
            equation.PerTest,
            equation.PerBoth,
            yield,
            reading.Value
        );
        bool isAboveLimit = reading.Value > equation.ZeroAbove;
        double rate = isAboveLimit ? 0 : equation.Advice(yield, reading.Value);
        var scale = LimitScale.Of(
            $"{Id}-{question.Crop.Row}-{reading.Nutrient}",
            reading,
            question.Crop.Row,
            CropRows.WordsFor(question.Crop.Row),
            equation.Status,
            equation.SourceId,
            [("responsive", equation.ZeroAbove, true)],
            "not responsive"
        );
        string forYield = equation.AsksForYield ? $" for a yield of {question.Crop.Yield}" : "";
        string least = rate > raw ? $", and never for less than {Amounts.Print(equation.LeastRate, 4)} lb/ac" : "";
        return SufficiencyNeed.Of(
            reading,
            rate,
            reading.RatingOn(scale, Id),
            rate == 0
                ? $"{reading.Subject} is at or beyond {reading.Limit(equation.ZeroAbove, 1)}, so none is needed."
                : $"{reading.Subject} does not pass {reading.Limit(equation.ZeroAbove, 1)}, so the equation asks for this "
                    + $"much{forYield}{least}.",
            equation.Status,
            [.. equation.SourceId.Split(';')],
            () =>
                isAboveLimit
                    ? SufficiencyNeed.BeyondTheEnd(
                        reading,
                        Math.Round(equation.ZeroAbove, 1, MidpointRounding.AwayFromZero),
                        equation.SourceId.Split(';')[0],
                        equation.Status
                    )
                    : equation.Line(SoilWords.For(reading.Nutrient), yield, reading.Value, rate)
        );
    }

    private sealed record Equation(
        ImmutableArray<Extractant> Extractants,
        string Formula,
        double Constant,
        double PerYield,
        double PerTest,
        double PerBoth,
        double? PrintedLimit,
        double LeastRate,
        string SourceId,
        DataStatus Status
    )
    {
        internal bool AsksForYield => PerYield != 0 || PerBoth != 0;

        /// <summary>Test above which nothing is advised: the printed limit, else where the line reaches zero for every
        /// yield.</summary>
        internal double ZeroAbove => PrintedLimit ?? -PerYield / PerBoth;

        internal double Advice(double yield, double test) =>
            SystemMath.LinearAdvice(LeastRate, Constant, PerYield, PerTest, PerBoth, yield, test);

        /// <summary>The equation as printed: what falls with the test stands behind a minus.</summary>
        internal WorkedLine Line(string nutrient, double yield, double test, double rate) =>
            NutrientFormulas
                .All[Formula]
                .Line(
                    NutrientFormulas.PerAcre(rate),
                    ("nutrient", nutrient),
                    ("least rate", NutrientFormulas.Number(LeastRate)),
                    ("constant", NutrientFormulas.Number(Constant)),
                    ("per yield", NutrientFormulas.Number(PerYield)),
                    ("per test", NutrientFormulas.Number(-PerTest)),
                    ("per yield and test", NutrientFormulas.Number(-PerBoth)),
                    ("yield", NutrientFormulas.Number(yield)),
                    ("test", NutrientFormulas.Number(test))
                );
    }
}
