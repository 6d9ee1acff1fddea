using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>One report through every system that accepts it, side by side.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SystemComparison : IWorkedResult
{
    private SystemComparison(ImmutableArray<NutrientRecommendation> answers)
    {
        Answers = [.. answers.Where(HasSomethingToSay)];
        LeftOut = [.. answers.Where(a => !HasSomethingToSay(a))];
        Rows =
        [
            .. Answers
                .SelectMany(a =>
                    a.Needs.Select(n => new ComparisonRow
                    {
                        System = a.System,
                        Crop = a.Crop,
                        Need = n,
                    })
                )
                .OrderBy(r => r.Need.Nutrient)
                .ThenBy(r => r.Need.IsLegalMaximum)
                .ThenBy(r => r.Need.Rate),
        ];
        Disagreements =
        [
            .. Rows.Where(r => !r.Need.IsLegalMaximum)
                .GroupBy(r => r.Need.Nutrient)
                .Where(g => g.Count() > 1)
                .Select(g => new SystemDisagreement
                {
                    Nutrient = g.Key,
                    Lowest = g.First(),
                    Highest = g.Last(),
                }),
        ];
    }

    /// <summary>Gets the answers of the systems that accept the report for at least one nutrient: a need, or a rating
    /// where the system prints no rate.</summary>
    public ImmutableArray<NutrientRecommendation> Answers { get; }

    /// <summary>Gets the answers of the systems that do not; each says why.</summary>
    public ImmutableArray<NutrientRecommendation> LeftOut { get; }

    /// <summary>Gets a line for every need, by nutrient and then from the least to the most; legal ceilings last.</summary>
    public ImmutableArray<ComparisonRow> Rows { get; }

    /// <summary>Gets, for every nutrient with two answers or more, how far apart they are and why.</summary>
    public ImmutableArray<SystemDisagreement> Disagreements { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Answers.SelectMany(a => a.Findings));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Answers.SelectMany(a => a.Sources).Distinct()];

    /// <summary>Compares the systems for one crop row.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="crop">Crop row, yield and use.</param>
    /// <param name="askedByName">Systems asked by name, numbers from memory included; null asks every system but leaves
    /// out answers that rest on numbers from memory.</param>
    /// <returns>The side-by-side.</returns>
    public static SystemComparison For(PlotSoil soil, CropUse crop, IEnumerable<RecommendationSystem>? askedByName = null)
    {
        ArgumentNullException.ThrowIfNull(crop);
        return For(soil, _ => crop, askedByName);
    }

    /// <summary>Compares the systems when each takes the plot as another of its rows.</summary>
    /// <param name="soil">Soil; a report will do.</param>
    /// <param name="cropFor">The row to ask each system for; null leaves the system out.</param>
    /// <param name="askedByName">As in the other overload.</param>
    /// <returns>The side-by-side.</returns>
    public static SystemComparison For(
        PlotSoil soil,
        Func<RecommendationSystem, CropUse?> cropFor,
        IEnumerable<RecommendationSystem>? askedByName = null
    )
    {
        ArgumentNullException.ThrowIfNull(soil);
        ArgumentNullException.ThrowIfNull(cropFor);
        bool isAskedByName = askedByName is not null;
        return For(soil, cropFor, askedByName ?? RecommendationSystem.Everything, _ => isAskedByName);
    }

    /// <summary>As above, where some systems are asked by name and the others are not.</summary>
    internal static SystemComparison For(
        PlotSoil soil,
        Func<RecommendationSystem, CropUse?> cropFor,
        IEnumerable<RecommendationSystem> systems,
        Func<RecommendationSystem, bool> isAskedByName
    ) =>
        new([
            .. from system in systems
            let crop = cropFor(system)
            where crop is not null
            select system.Recommend(soil, crop, isAskedByName(system)),
        ]);

    /// <summary>Finds the disagreement about a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The disagreement, or null when fewer than two systems answer.</returns>
    public SystemDisagreement? About(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return Disagreements.FirstOrDefault(d => d.Nutrient == nutrient);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [.. Answers.SelectMany(a => a.ShowWork().Select(l => l with { Label = $"{a.System.Name}, {l.Label}" }))];

    private static bool HasSomethingToSay(NutrientRecommendation answer) =>
        answer.Needs.Length > 0 || answer.Unanswered.Any(u => u.Rating is not null);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
