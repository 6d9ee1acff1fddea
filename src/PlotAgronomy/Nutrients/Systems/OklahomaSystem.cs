using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Straight lines between the printed points of index and requirement; none from the last point on.</summary>
internal sealed class OklahomaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Lazy<ILookup<(CropRow, PlantNutrient), (double Index, double Rate, Origin Origin)>> Points =
        Table.Grouped(
            "Nutrients/Data/ok-points.csv",
            r => (r.Choice<CropRow>("crop"), r.Choice<PlantNutrient>("nutrient")),
            r => (r.Number("index"), r.Number("rate_lb_per_ac"), r.Origin())
        );

    private protected override SystemAnswer Answer(SystemQuestion question, DomainReading reading)
    {
        var row = question.Crop.Row == CropRow.Wheat ? CropRow.SmallGrain : question.Crop.Row;
        var points = Points.Value[(row, reading.Nutrient)].ToImmutableArray();
        double rate = SystemMath.BetweenPoints(reading.Value, [.. points.Select(p => (p.Index, p.Rate))]);
        var end = points[^1];
        var scale = LimitScale.Of(
            $"OK-{row}-{reading.Nutrient}",
            reading,
            row,
            $"{CropRows.WordsFor(row)}, sufficient at index {Amounts.Print(end.Index, 4)}",
            end.Origin.Status,
            NutrientFormulas.All["oklahoma-between-points"].Origin!.SourceId,
            [("not sufficient", end.Index, false)],
            "sufficient"
        );
        bool isEnough = reading.Value >= end.Index;
        return SufficiencyNeed.Of(
            reading,
            rate,
            reading.RatingOn(scale, Id),
            isEnough
                ? $"{reading.Subject} is at or above {reading.Limit(end.Index)}, where the soil itself feeds a full crop, so "
                    + "none is needed."
                : $"{reading.Subject} is below {reading.Limit(end.Index)}; the rate is read between the printed points for "
                    + $"{CropRows.WordsFor(row)}.",
            isEnough ? end.Origin.Status : Statuses.WeakestOf([.. points.Select(p => p.Origin.Status)]),
            [.. points.SelectMany(p => p.Origin.SourceIds).Distinct(StringComparer.Ordinal)],
            () =>
                isEnough
                    ? SufficiencyNeed.BeyondTheEnd(reading, end.Index, end.Origin.SourceId, end.Origin.Status)
                    : LineOf(reading, points, rate),
            AcidSoil(question, reading)
        );
    }

    /// <summary>On acid soil without lime wheat is helped by phosphate banded with the seed: said, not added. Source
    /// SOIL-OK3.</summary>
    private static ImmutableArray<Finding> AcidSoil(SystemQuestion question, DomainReading reading) =>
        reading.Nutrient == PlantNutrient.Phosphate
        && question.Crop.Row == CropRow.Wheat
        && question.Report.WaterPh is { } ph
        && ph.Value < NutrientConstants.All["OK-acid-pH"]
            ?
            [
                FindingCatalog.Create(
                    NutrientCodes.AcidSoilPhosphate,
                    ("ph", Amounts.Print(ph.Value, 1)),
                    ("limit", Amounts.Print(NutrientConstants.All["OK-acid-pH"], 1)),
                    ("rate", Amounts.Print(NutrientConstants.All["OK-acid-band"], 4))
                ),
            ]
            : [];

    private static WorkedLine LineOf(
        DomainReading reading,
        ImmutableArray<(double Index, double Rate, Origin Origin)> points,
        double rate
    )
    {
        var above = points.First(p => reading.Value < p.Index);
        var below = points.Last(p => reading.Value >= p.Index);
        return NutrientFormulas
            .All["oklahoma-between-points"]
            .Line(
                NutrientFormulas.PerAcre(rate),
                ("nutrient", SoilWords.For(reading.Nutrient)),
                ("index", NutrientFormulas.Number(reading.Value)),
                ("index below", NutrientFormulas.Number(below.Index)),
                ("index above", NutrientFormulas.Number(above.Index)),
                ("rate below", NutrientFormulas.Number(below.Rate)),
                ("rate above", NutrientFormulas.Number(above.Rate))
            );
    }
}
