using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A report rated by one system. A nutrient without a rating has no limits there; that is no verdict on it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SoilRatings : IWorkedResult
{
    internal SoilRatings() { }

    /// <summary>Gets the system.</summary>
    public required RatingSystem System { get; init; }

    /// <summary>Gets the ratings.</summary>
    public required ImmutableArray<NutrientRating> Ratings { get; init; }

    /// <summary>Gets what the report holds and the system has limits for, but could not be rated.</summary>
    public required ImmutableArray<UnratedNutrient> Unrated { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. Unrated.Select(u =>
                FindingCatalog.Create(
                    NutrientCodes.NotRated,
                    ("system", System.Name),
                    ("nutrient", SoilWords.For(u.Analyte)),
                    ("reason", u.Reason)
                )
            ),
            .. Ratings.Any(r => r.Status == DataStatus.Memory) ? new[] { MemoryGate.FindingFor(System.Name, Sources) } : [],
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Ratings.SelectMany(r => r.Sources).Distinct()];

    /// <summary>Finds the rating of a nutrient.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <returns>The rating, or null when there is none.</returns>
    public NutrientRating? For(SoilAnalyte analyte)
    {
        Guard.Defined(analyte);
        return Ratings.FirstOrDefault(r => r.Scale.Analyte == analyte);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Ratings.Select(r => r.Line)];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
