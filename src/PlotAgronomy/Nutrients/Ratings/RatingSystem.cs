using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A system's rating limits: low, medium, high and their kin, with every limit in sight.</summary>
/// <remarks>Get one from <see cref="RatingSystems"/>. Limits in lb/ac are for the furrow slice, twice the ppm
/// (SOIL-PA1).</remarks>
public sealed class RatingSystem
{
    internal RatingSystem(CsvRow row, ImmutableArray<RatingScale> scales)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Institution = row.Institution();
        Status = row.Status();
        Scales = scales;
    }

    /// <summary>Gets the id, such as <c>DE</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the standing of its limits as a whole.</summary>
    public DataStatus Status { get; }

    /// <summary>Gets the scales, one for each nutrient, test and scope.</summary>
    public ImmutableArray<RatingScale> Scales { get; }

    /// <summary>Rates what the report holds.</summary>
    /// <param name="report">Soil report.</param>
    /// <param name="crop">Crop row, for systems whose limits differ by crop; null when none was chosen.</param>
    /// <param name="setting">What else is known of the soil; null for nothing.</param>
    /// <returns>The ratings, and what could not be rated with the reason.</returns>
    public SoilRatings Rate(SoilReport report, CropRow? crop = null, PlotSetting? setting = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        var facts = new ScaleFacts(
            report,
            crop is { } row ? Guard.Defined(row, nameof(crop)) : null,
            setting ?? PlotSetting.Unknown
        );
        var ratings = ImmutableArray.CreateBuilder<NutrientRating>();
        var unrated = ImmutableArray.CreateBuilder<UnratedNutrient>();
        foreach (var scales in Scales.GroupBy(s => s.Analyte).Where(g => report.Find(g.Key) is not null))
        {
            var (rating, reason) = facts.Rate(Id, [.. scales]);
            if (rating is not null)
            {
                ratings.Add(rating);
            }
            else
            {
                unrated.Add(new UnratedNutrient { Analyte = scales.Key, Reason = reason });
            }
        }

        return new SoilRatings
        {
            System = this,
            Ratings = ratings.ToImmutable(),
            Unrated = unrated.ToImmutable(),
            Findings = Finding.InOrder([
                .. unrated.Select(u =>
                    FindingCatalog.Create(
                        NutrientCodes.NotRated,
                        ("system", Name),
                        ("nutrient", SoilWords.For(u.Analyte)),
                        ("reason", u.Reason)
                    )
                ),
                .. ratings.Any(r => r.Status == DataStatus.Memory)
                    ? new[] { MemoryGate.FindingFor(Name, string.Join(", ", ratings.SelectMany(r => r.SourceIds).Distinct())) }
                    : [],
            ]),
        };
    }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
