using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>rate = a I^2 - b I + c, held at zero from the first zero on; printed advice is the rate plus or minus 10
/// lb/ac.</summary>
internal sealed class NorthCarolinaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Lazy<FrozenDictionary<(CropRow, SoilClass, PlantNutrient), PrintedRow>> Rows = Table.Keyed(
        "Nutrients/Data/nc-rows.csv",
        r => (r.Choice<CropRow>("crop"), r.Choice<SoilClass>("soil_class"), r.Choice<PlantNutrient>("nutrient")),
        PrintedRow.FromRow
    );

    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        var soilClass = question.SoilClass ?? SoilClass.Mineral;
        var (equation, range, origin) = Rows.Value[(question.Crop.Row, soilClass, reading.Nutrient)];
        double rate = equation.Rate(reading.Value);
        double raw = SystemMath.Parabola(reading.Value, equation.A, equation.B, equation.C);
        var rating = reading.RatingOn(RatingTables.Find(reading.Nutrient == PlantNutrient.Phosphate ? "NC-P" : "NC-K"), Id);

        string number = Amounts.Print(equation.Number, 0);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (question.SoilClass is null)
        {
            findings.Add(FindingCatalog.Create(NutrientCodes.SoilClassAssumed, ("system", Name)));
        }

        if (rate == 0 && raw > 0)
        {
            findings.Add(
                FindingCatalog.Create(
                    NutrientCodes.CurveTurnsUp,
                    ("system", Name),
                    ("nutrient", SoilWords.For(reading.Nutrient)),
                    ("equation", number),
                    ("index", Amounts.Print(reading.Value, 4)),
                    ("raw", Amounts.Print(raw, 1)),
                    ("zero", Amounts.Print(equation.StopsAt, 1))
                )
            );
        }

        return new NutrientNeed
        {
            Nutrient = reading.Nutrient,
            Rate = ApplicationRate.FromPoundsPerAcre(rate),
            PublishedLow = ApplicationRate.FromPoundsPerAcre(Math.Max(0, rate - range)),
            PublishedHigh = ApplicationRate.FromPoundsPerAcre(rate == 0 ? 0 : rate + range),
            Rating = rating,
            Why =
                rate == 0
                    ? $"{reading.Subject} is at or beyond {reading.Limit(equation.StopsAt, 1)}, where the state's equation "
                        + $"{number} ends, so none is needed."
                    : $"{reading.Subject} is {rating?.Name ?? "not rated"}; by the state's equation {number} for "
                        + $"{SoilWords.For(soilClass)} soil this much is due, give or take {Amounts.Print(range, 4)} lb/ac.",
            Status = origin.Status,
            SourceIds = [.. equation.Origin.SourceIds.Concat(origin.SourceIds).Distinct(StringComparer.Ordinal)],
            Findings = findings.ToImmutable(),
            Work = () =>
                [
                    rate == raw
                        ? LineOf(reading, equation, rate)
                        : SufficiencyNeed.BeyondTheEnd(
                            reading,
                            Math.Round(equation.StopsAt, 1, MidpointRounding.AwayFromZero),
                            equation.Origin.SourceId,
                            equation.Origin.Status
                        ),
                ],
        };
    }

    private static WorkedLine LineOf(DomainReading reading, NorthCarolinaEquation equation, double rate) =>
        NutrientFormulas
            .All["nc-index-curve"]
            .Line(
                NutrientFormulas.PerAcre(rate),
                ("nutrient", SoilWords.For(reading.Nutrient)),
                ("a", NutrientFormulas.Number(equation.A)),
                ("b", NutrientFormulas.Number(equation.B)),
                ("c", NutrientFormulas.Number(equation.C)),
                ("index", NutrientFormulas.Number(reading.Value))
            );

    private sealed record PrintedRow(NorthCarolinaEquation Equation, double Range, Origin Origin)
    {
        internal static PrintedRow FromRow(CsvRow row)
        {
            var equation = NorthCarolinaEquation.Find(row.Integer("equation"));
            return equation.IsPerAcre
                ? new(equation, row.Number("printed_range_lb_per_ac"), row.Origin())
                : throw row.Problem("equation", "gives no pounds per acre");
        }
    }
}
