using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The printed grid of a crop: the rating of P picks the row, the rating of K the column.</summary>
internal sealed class SouthCarolinaSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Lazy<IReadOnlyDictionary<CropRow, ImmutableArray<Cell>>> Grid = new(() =>
        Table
            .Grouped("Nutrients/Data/sc-grid.csv", r => r.Choice<CropRow>("crop"), Cell.FromRow)
            .Value.ToDictionary(g => g.Key, g => g.ToImmutableArray())
    );

    private static readonly ImmutableArray<Extractant> Mehlich1 = [Extractant.Mehlich1];
    private static readonly double NitrogenCut = NutrientConstants.All["SC-piedmont-nitrogen-cut"];
    private static readonly double MediumSubsoilCut = NutrientConstants.All["SC-subsoil-medium-cut"];
    private static readonly double HighSubsoilCut = NutrientConstants.All["SC-subsoil-high-cut"];

    /// <summary>The printed ratings, poorest first.</summary>
    internal static ImmutableArray<string> Ratings { get; } = ["low", "medium", "sufficient", "high", "excessive"];

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading) =>
        reading.Nutrient == PlantNutrient.Potash ? PotashBy(question, reading) : PhosphateBy(question);

    private protected override NutrientNeed? NeedOfCrop(SystemRequest question)
    {
        if (!Has(question.Crop.Row, PlantNutrient.Phosphate))
        {
            return null;
        }

        return new NitrogenNeed(question, SystemMath.Less(AnyCell(question).Nitrogen, CutOf(question)));
    }

    /// <summary>A cell of the crop's grid: all print the same nitrogen.</summary>
    private static Cell AnyCell(SystemRequest question) => Grid.Value[question.Crop.Row][0];

    private static double CutOf(SystemRequest question) =>
        AnyCell(question).Nitrogen > 0 && question.Soil.Region == SoilRegion.Piedmont ? NitrogenCut : 0;

    private static SystemAnswer PotashBy(SystemRequest question, DomainReading reading)
    {
        var found = PotassiumScale(question).ClassOf(reading.Value)!;
        var cell = FirstCell(question.Crop.Row, null, found.Name)!;
        double held = ShareOfSubsoil(question.Report.SubsoilPotassium, PotassiumScale(question));
        double pounds = SystemMath.SouthCarolinaPotash(cell.Potash, held);
        return new PotashNeed(question, reading, pounds, PotassiumScale(question).StatusOf(found));
    }

    /// <summary>Potash by the class of potassium. Phosphate goes by the rating that the laboratory printed, and not by the
    /// reading: it is the same for every row that has this rating.</summary>
    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user)
    {
        if (reading.Nutrient == PlantNutrient.Phosphate)
        {
            double printed = FirstCell(question.Crop.Row, PrintedRating(question), null)!.Phosphate;
            return user.Use(new ClassNeedKernel { Limits = new([]), Needs = [ClassNeed.Figure(printed)] });
        }

        double held = ShareOfSubsoil(question.Report.SubsoilPotassium, PotassiumScale(question));
        return user.Use(
            new ClassNeedKernel
            {
                Limits = PotassiumScale(question).Limits,
                Needs =
                [
                    .. PotassiumScale(question).Classes.Select(c =>
                        ClassNeed.Figure(
                            SystemMath.SouthCarolinaPotash(FirstCell(question.Crop.Row, null, c.Name)!.Potash, held)
                        )
                    ),
                ],
            }
        );
    }

    private static RatingScale PotassiumScale(SystemRequest question) => question.System.Scales[0];

    private static string? PrintedRating(SystemRequest question) =>
        question.Report.PrintedPhosphorusRating?.Trim().ToLowerInvariant();

    /// <summary>Part of the topsoil potash that the subsoil makes good: none, a quarter or half, as it is low, medium or
    /// above. Source SOIL-SC5.</summary>
    private static double ShareOfSubsoil(SoilReading? subsoil, RatingScale scale)
    {
        if (subsoil is null)
        {
            return 0;
        }

        var report = new SoilReport { Laboratory = "subsoil", Readings = [subsoil] };
        var (_, value) = ReportReadings.Find(report, SoilAnalyte.Potassium, Mehlich1, SoilTestUnit.PoundsPerAcre)
            ?? throw new ArgumentException(
                $"Subsoil potassium must be by Mehlich-1 in lb/ac or ppm, found {subsoil}.",
                nameof(subsoil)
            );
        return scale.ClassOf(value)!.Order switch
        {
            1 => 0,
            2 => MediumSubsoilCut,
            _ => HighSubsoilCut,
        };
    }

    /// <summary>The rating the laboratory printed is enough: no reading is invented for it.</summary>
    private protected override SystemAnswer? AnswerWithoutReading(PlantNutrient nutrient, SystemRequest question) =>
        nutrient == PlantNutrient.Phosphate
        && question.Report.PrintedPhosphorusRating is not null
        && !ReportReadings.Holds(question.Report, SoilAnalyte.Phosphorus)
        && Has(question.Crop.Row, PlantNutrient.Phosphate)
            ? PhosphateBy(question)
            : (SystemAnswer?)null;

    private SystemAnswer PhosphateBy(SystemRequest question)
    {
        const PlantNutrient Nutrient = PlantNutrient.Phosphate;
        string? printed = PrintedRating(question);
        if (printed is null || FirstCell(question.Crop.Row, printed, null) is null)
        {
            return AskFor(Nutrient, question, _ =>
                "its phosphorus limits are not in this library: give the rating the laboratory printed ("
                + string.Join(", ", Ratings)
                + ")"
            );
        }

        string? column = ReportReadings.Find(question.Report, SoilAnalyte.Potassium, Mehlich1, SoilTestUnit.PoundsPerAcre)
            is { } found
            ? PotassiumScale(question).ClassOf(found.Value)!.Name
            : null;
        var cell = FirstCell(question.Crop.Row, printed, column)!;
        return DependsOnColumn(question.Crop.Row, printed, column, cell.Phosphate)
            ? AskFor(Nutrient, question, _ =>
                "in this row of the grid the phosphate depends on the rating of potassium, which the report does not hold"
            )
            : new PhosphateNeed(question, cell);
    }

    /// <summary>The first cell of a row and a column; null takes any.</summary>
    private static Cell? FirstCell(CropRow crop, string? phosphorus, string? potassium)
    {
        foreach (var cell in Grid.Value[crop])
        {
            if (cell.IsAt(phosphorus, potassium))
            {
                return cell;
            }
        }

        return null;
    }

    private static bool DependsOnColumn(CropRow crop, string phosphorus, string? potassium, double phosphate)
    {
        foreach (var cell in Grid.Value[crop])
        {
            if (cell.IsAt(phosphorus, potassium) && cell.Phosphate != phosphate)
            {
                return true;
            }
        }

        return false;
    }

    private static WorkedLine AsPrinted(PlantNutrient nutrient, CropRow crop, double pounds, Cell cell) =>
        NutrientFormulas
            .All["rate-as-printed"]
            .Line(NutrientFormulas.PerAcre(pounds), ("what", $"{SoilWords.For(nutrient)}, grid of {CropRows.WordsFor(crop)}"))
            .From(cell.Origin.FirstSource);

    private sealed record Cell(
        string Phosphorus,
        string Potassium,
        double Nitrogen,
        double Phosphate,
        double Potash,
        bool BreaksThePattern,
        Origin Origin
    )
    {
        internal static Cell FromRow(CsvRow r) =>
            new(
                r.Text("phosphorus_rating"),
                r.Text("potassium_rating"),
                r.Number("nitrogen_lb_per_ac"),
                r.Number("phosphate_lb_per_ac"),
                r.Number("potash_lb_per_ac"),
                r.YesOrNo("breaks_the_pattern"),
                r.Origin()
            );

        internal bool IsAt(string? phosphorus, string? potassium) =>
            (phosphorus is null || phosphorus == Phosphorus) && (potassium is null || potassium == Potassium);
    }

    private sealed class NitrogenNeed(SystemRequest question, double poundsPerAcre)
        : NutrientNeed(question, PlantNutrient.Nitrogen, poundsPerAcre, DataStatus.Read)
    {
        public override string Why
        {
            get
            {
                string less = Cut > 0 ? $"; on Piedmont soil it is {Amounts.Print(Cut, 4)} lb/ac less" : "";
                return $"Every cell of the printed grid for {CropRows.WordsFor(Question.Crop.Row)} gives the same "
                    + $"nitrogen{less}.";
            }
        }

        public override ImmutableArray<Source> Sources => AnyCell(Question).Origin.Sources;

        private double Cut => CutOf(Question);

        internal override ImmutableArray<WorkedLine> Work()
        {
            double pounds = Rate.PoundsPerAcre;
            return
            [
                Cut > 0
                    ? NutrientFormulas
                        .All["sc-piedmont-nitrogen"]
                        .Line(
                            NutrientFormulas.PerAcre(pounds),
                            ("nutrient", SoilWords.For(PlantNutrient.Nitrogen)),
                            ("printed in every cell", NutrientFormulas.Number(AnyCell(Question).Nitrogen)),
                            ("cut on Piedmont soil", NutrientFormulas.Number(Cut))
                        )
                    : AsPrinted(Nutrient, Question.Crop.Row, pounds, AnyCell(Question)),
            ];
        }
    }

    private sealed class PotashNeed(SystemRequest question, DomainReading reading, double poundsPerAcre, DataStatus status)
        : SufficiencyNeed(question, reading, poundsPerAcre, status)
    {
        public override string Why
        {
            get
            {
                string cut = Held > 0 ? $", cut to {Amounts.Print((1 - Held) * 100, 0)} % for what the subsoil holds" : "";
                return $"{Reading.Subject} is {Rating.Name}, and that column of the printed grid for "
                    + $"{CropRows.WordsFor(Question.Crop.Row)} gives this rate{cut}.";
            }
        }

        public override NutrientRating Rating => Question.System.RatingOn(Reading, PotassiumScale(Question))!;

        public override ImmutableArray<Source> Sources => [.. Cell.Origin.Sources, .. Rating.Scale.Sources];

        private Cell Cell => FirstCell(Question.Crop.Row, null, Rating.Name)!;

        private double Held => ShareOfSubsoil(Question.Report.SubsoilPotassium, PotassiumScale(Question));

        private protected override WorkedLine Line()
        {
            double pounds = Rate.PoundsPerAcre;
            return Held > 0
                ? NutrientFormulas
                    .All["sc-subsoil-potash"]
                    .Line(
                        NutrientFormulas.PerAcre(pounds),
                        ("nutrient", NutrientInWords),
                        ("printed cell", NutrientFormulas.Number(Cell.Potash)),
                        ("share the subsoil holds", NutrientFormulas.Number(Held))
                    )
                : AsPrinted(Nutrient, Question.Crop.Row, pounds, Cell);
        }
    }

    private sealed class PhosphateNeed(SystemRequest question, Cell cell)
        : NutrientNeed(question, PlantNutrient.Phosphate, cell.Phosphate, DataStatus.Read)
    {
        public override string Why =>
            $"The laboratory rates phosphorus {cell.Phosphorus}, and that row of the printed grid for "
            + $"{CropRows.WordsFor(Question.Crop.Row)} gives this rate.";

        public override ImmutableArray<Source> Sources => cell.Origin.Sources;

        internal override ImmutableArray<Finding> Findings =>
            cell.BreaksThePattern
                ?
                [
                    FindingCatalog.Create(
                        NutrientCodes.GridBreaksPattern,
                        ("system", Question.System.Name),
                        ("rate", Amounts.Print(cell.Phosphate, 4))
                    ),
                ]
                : [];

        internal override ImmutableArray<WorkedLine> Work() => [AsPrinted(Nutrient, Question.Crop.Row, cell.Phosphate, cell)];
    }
}
