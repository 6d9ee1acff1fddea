using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>A batch mixed to a wanted grade: pounds of each material and of filler, or why it cannot be made.</summary>
/// <remarks>sum of material x percent = batch x wanted percent for N, P2O5, K2O and every other nutrient the wanted grade names;
/// filler is what is left of the batch. Of several recipes the cheapest is given, or the lightest where nothing has a
/// price.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class GradeMix : IWorkedResult
{
    private readonly bool made;

    private GradeMix(
        FertilizerAnalysis wanted,
        Mass batch,
        ImmutableArray<GradeMixLine> lines,
        Mass filler,
        double? highest,
        ImmutableArray<(PlantNutrient, PercentRange)> ranges,
        bool made
    )
    {
        Wanted = wanted;
        Batch = batch;
        Lines = lines;
        Filler = filler;
        HighestPercentOfWanted = highest;
        PossibleRanges = ranges;
        this.made = made;
    }

    /// <summary>Gets the wanted grade.</summary>
    public FertilizerAnalysis Wanted { get; }

    /// <summary>Gets the weight of the batch.</summary>
    public Mass Batch { get; }

    /// <summary>Gets a value indicating whether the grade can be made from these materials.</summary>
    public bool CanBeMade => HighestPercentOfWanted is >= 100 - 1e-7;

    /// <summary>Gets the materials used; empty when the grade cannot be made.</summary>
    public ImmutableArray<GradeMixLine> Lines { get; }

    /// <summary>Gets the weight of filler; zero when the grade cannot be made.</summary>
    public Mass Filler { get; }

    /// <summary>Gets how strong a grade of the same ratio these materials can make, in percent of the wanted one; null when the
    /// ratio itself cannot be made.</summary>
    public double? HighestPercentOfWanted { get; }

    /// <summary>Gets, when the ratio cannot be made, what each nutrient could be with the others as wanted; a nutrient without a
    /// possible value is left out.</summary>
    public ImmutableArray<(PlantNutrient Nutrient, PercentRange Possible)> PossibleRanges { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [Source.Practice];

    /// <summary>Blends a batch.</summary>
    /// <param name="wanted">Wanted grade.</param>
    /// <param name="batch">Weight of the batch, such as 2000 lb or 50 lb; above 0.</param>
    /// <param name="materials">Materials at hand, with their prices; at least one.</param>
    /// <returns>The recipe, or the region that can be reached.</returns>
    /// <exception cref="ArgumentException">No material, or a batch not above 0.</exception>
    public static GradeMix For(FertilizerAnalysis wanted, Mass batch, params IReadOnlyList<Offer<FertilizerProduct>> materials)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        double batchPounds = batch.Pounds;
        Guard.Above(batchPounds, 0, "lb", nameof(batch));
        var shelf = FertilizerShelf.FromOffers(materials).Offers;
        var problem = new BlendProblem(wanted, shelf);
        double[]? parts = problem.LeastCost();
        double? highest = problem.HighestShare();
        bool made = parts is not null;
        var lines = made ? LinesOf(shelf, parts!, batchPounds) : [];
        double used = made ? parts!.Sum() * batchPounds : batchPounds;
        var ranges = highest is null ? problem.Ranges() : [];
        return new GradeMix(
            wanted,
            batch,
            lines,
            Mass.FromPounds(FertilizerMath.Filler(batchPounds, used)),
            highest * 100,
            ranges,
            made
        );
    }

    /// <summary>The grade of a heap of materials: exact, before any rounding down for a label.</summary>
    /// <param name="materials">Materials and their weights; at least one weight above 0.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentException">No material, or a negative weight.</exception>
    /// <remarks>percent = sum of weight x percent / sum of weights.</remarks>
    public static FertilizerAnalysis GradeOf(params IReadOnlyList<(FertilizerAnalysis Analysis, Mass Mass)> materials)
    {
        Guard.NotEmpty(materials);
        double total = 0;
        var sums = new double[Enum.GetValues<PlantNutrient>().Length];
        foreach (var (analysis, mass) in materials)
        {
            ArgumentNullException.ThrowIfNull(analysis, nameof(materials));
            double pounds = mass.Pounds;
            total += Guard.AtLeast(pounds, 0, "lb", nameof(materials));
            foreach (var nutrient in Enum.GetValues<PlantNutrient>())
            {
                sums[(int)nutrient] += FertilizerMath.NutrientIn(pounds, analysis.Percent(nutrient));
            }
        }

        Guard.Above(total, 0, "lb", nameof(materials));
        return FertilizerAnalysis.Checked(Array.ConvertAll(sums, s => FertilizerMath.PercentOf(s, total)));
    }

    /// <summary>The grade a label may state: whole numbers, rounded down.</summary>
    /// <param name="exact">Exact analysis.</param>
    /// <returns>N, P2O5 and K2O as whole percent.</returns>
    public static FertilizerAnalysis LabelGrade(FertilizerAnalysis exact)
    {
        ArgumentNullException.ThrowIfNull(exact);
        return FertilizerAnalysis.FromPercent(
            Floor(PlantNutrient.Nitrogen),
            Floor(PlantNutrient.Phosphate),
            Floor(PlantNutrient.Potash)
        );

        double Floor(PlantNutrient nutrient) => Tolerance.Floor(exact.Percent(nutrient));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        double batchPounds = Batch.Pounds;
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        foreach (var line in Lines)
        {
            double pounds = line.Mass.Pounds;
            lines.Add(
                FertilizerFormulas
                    .All["material-in-a-ton"]
                    .Line(
                        $"{Amounts.Print(FertilizerMath.PoundsPerTon(pounds, batchPounds), 1)} lb",
                        ("material", line.Material.ToString()),
                        ("weight", Amounts.Print(line.Mass, decimals: 2)),
                        ("batch", Amounts.Print(Batch, decimals: 1))
                    )
            );
        }

        double materialPounds = Lines.Sum(l => l.Mass.Pounds);
        lines.Add(
            CanBeMade
                ? FertilizerFormulas
                    .All["filler"]
                    .Line(
                        Amounts.Print(Filler, decimals: 2),
                        ("grade", Wanted.ToString()),
                        ("batch weight", Amounts.Print(Batch, decimals: 1)),
                        ("batch", Amounts.Print(Batch, decimals: 2)),
                        ("materials", Amounts.Print(Mass.FromPounds(materialPounds), decimals: 2))
                    )
                : FertilizerFormulas
                    .All["grade-impossible"]
                    .Line(
                        HighestPercentOfWanted is { } highest
                            ? $"the highest grade of this ratio is {Amounts.Print(highest, 2)} % of the wanted {Wanted}"
                            : $"the ratio of {Wanted} cannot be made"
                    )
        );
        if (CanBeMade)
        {
            foreach (var nutrient in Enum.GetValues<PlantNutrient>().Where(n => Wanted.Percent(n) > 0))
            {
                lines.Add(GradeLine(nutrient, batchPounds));
            }
        }

        return lines.ToImmutable();
    }

    private WorkedLine GradeLine(PlantNutrient nutrient, double batchPounds)
    {
        double pounds = 0;
        foreach (var line in Lines)
        {
            double materialPounds = line.Mass.Pounds;
            pounds += FertilizerMath.NutrientIn(materialPounds, line.Material.Analysis.Percent(nutrient));
        }

        return FertilizerFormulas
            .All["grade-of-mixture"]
            .Line(
                $"{Amounts.Print(FertilizerMath.PercentOf(pounds, batchPounds), 2)} %",
                ("symbol", PlantNutrients.Symbols[nutrient]),
                ("nutrient", Amounts.Print(Mass.FromPounds(pounds), decimals: 2)),
                ("weight", Amounts.Print(Batch, decimals: 1))
            );
    }

    private static ImmutableArray<GradeMixLine> LinesOf(
        ImmutableArray<Offer<FertilizerProduct>> shelf,
        double[] parts,
        double batchPounds
    ) =>
        [
            .. shelf
                .Select(
                    (material, i) => new GradeMixLine { Material = material.Item, Mass = Mass.FromPounds(parts[i] * batchPounds) }
                )
                .Where((_, i) => parts[i] > 1e-12),
        ];

    private IEnumerable<Finding> Remarks()
    {
        if (!made && HighestPercentOfWanted is { } highest)
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.GradeTooHigh,
                ("grade", Wanted.ToString()),
                ("percent", Amounts.Print(highest, 2))
            );
        }
        else if (!made)
        {
            string possible = PossibleRanges.IsEmpty
                ? "no change of one nutrient alone makes it possible"
                : string.Join(
                    "; ",
                    PossibleRanges.Select(r =>
                        $"with the others as wanted, {PlantNutrients.Symbols[r.Nutrient]} can be {r.Possible}"
                    )
                );
            yield return FindingCatalog.Create(
                FertilizerCodes.RatioImpossible,
                ("grade", Wanted.ToString()),
                ("possible", possible)
            );
        }

        foreach (var finding in MixCompatibility.Cautions([.. Lines.Select(l => l.Material.Substance)]))
        {
            yield return finding;
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
