using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Straight lines between the printed points of index and requirement; none from the last point on.</summary>
internal sealed class OklahomaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Lazy<IReadOnlyDictionary<(CropRow, PlantNutrient), PrintedPoints>> Points = new(() =>
        Table
            .Grouped(
                "Nutrients/Data/ok-points.csv",
                r => (r.Choice<CropRow>("crop"), r.Choice<PlantNutrient>("nutrient")),
                r => (r.Number("index"), r.Number("rate_lb_per_ac"), r.Origin())
            )
            .Value.ToDictionary(g => g.Key, g => new PrintedPoints([.. g]))
    );

    private static readonly Constant AcidPh = NutrientConstants.All.Find("OK-acid-pH");
    private static readonly Constant AcidBand = NutrientConstants.All.Find("OK-acid-band");

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        var points = PointsFor(question, reading);
        return new Need(
            question,
            reading,
            points,
            reading.Value >= points.End.Index ? points.End.Origin.Status : points.Status
        );
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user) =>
        user.Use(PointsFor(question, reading).Kernel);

    private static PrintedPoints PointsFor(SystemRequest question, DomainReading reading) =>
        Points.Value[(PrintedRow(question.Crop.Row), reading.Nutrient)];

    private static CropRow PrintedRow(CropRow crop) => crop == CropRow.Wheat ? CropRow.SmallGrain : crop;

    private sealed class PrintedPoints(ImmutableArray<(double Index, double Rate, Origin Origin)> printed)
    {
        internal ImmutableArray<(double Index, double Rate)> Pairs { get; } = [.. printed.Select(p => (p.Index, p.Rate))];

        internal PointNeedKernel Kernel { get; } = new([.. printed.Select(p => (p.Index, p.Rate))]);

        internal (double Index, double Rate, Origin Origin) End => printed[^1];

        internal DataStatus Status { get; } = Statuses.WeakestOf([.. printed.Select(p => p.Origin.Status)]);

        internal ImmutableArray<Source> Sources => [.. printed.SelectMany(p => p.Origin.Sources).Distinct()];
    }

    private sealed class Need(SystemRequest question, DomainReading reading, PrintedPoints points, DataStatus status)
        : SufficiencyNeed(question, reading, points.Kernel.Rate(reading.Value, 0), status)
    {
        public override string Why =>
            IsEnough
                ? $"{Reading.Subject} is at or above {Reading.Limit(points.End.Index)}, where the soil itself feeds a full "
                    + "crop, so none is needed."
                : $"{Reading.Subject} is below {Reading.Limit(points.End.Index)}; the rate is read between the printed points "
                    + $"for {CropRows.WordsFor(Row)}.";

        public override NutrientRating? Rating =>
            Question.System.RatingOn(
                Reading,
                LimitScale.Of(
                    $"{Question.System.Id}-{Row}-{Reading.Nutrient}",
                    Reading,
                    Row,
                    $"{CropRows.WordsFor(Row)}, sufficient at index {Amounts.Print(points.End.Index, 4)}",
                    NutrientFormulas.All["oklahoma-between-points"].Origin!.KnownAs(points.End.Origin.Status),
                    [("not sufficient", points.End.Index, false)],
                    "sufficient"
                )
            );

        public override ImmutableArray<Source> Sources => points.Sources;

        /// <summary>On acid soil without lime wheat is helped by phosphate banded with the seed: said, not added. Source
        /// SOIL-OK3.</summary>
        internal override ImmutableArray<Finding> Findings =>
            Reading.Nutrient == PlantNutrient.Phosphate
            && Question.Crop.Row == CropRow.Wheat
            && Question.Report.WaterPh is { } ph
            && ph.Value < AcidPh
                ?
                [
                    FindingCatalog.Create(
                        NutrientCodes.AcidSoilPhosphate,
                        ("ph", Amounts.Print(ph.Value, 1)),
                        ("limit", Amounts.Print(AcidPh, 1)),
                        ("rate", Amounts.Print(AcidBand, 4))
                    ),
                ]
                : [];

        private CropRow Row => PrintedRow(Question.Crop.Row);

        private bool IsEnough => Reading.Value >= points.End.Index;

        private protected override WorkedLine Line()
        {
            if (IsEnough)
            {
                return TableEnd.Line(Reading, points.End.Index, points.End.Origin);
            }

            var above = points.Pairs.First(p => Reading.Value < p.Index);
            var below = points.Pairs.Last(p => Reading.Value >= p.Index);
            return NutrientFormulas
                .All["oklahoma-between-points"]
                .Line(
                    NutrientFormulas.PerAcre(Rate.PoundsPerAcre),
                    ("nutrient", NutrientInWords),
                    ("index", NutrientFormulas.Number(Reading.Value)),
                    ("index below", NutrientFormulas.Number(below.Index)),
                    ("index above", NutrientFormulas.Number(above.Index)),
                    ("rate below", NutrientFormulas.Number(below.Rate)),
                    ("rate above", NutrientFormulas.Number(above.Rate))
                );
        }
    }
}
