using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>In which of the five seasons a stand feeds, and which it leaves bare.</summary>
/// <remarks>A season is covered when the kinds rated high or medium in it hold together at least a stated share of a full stand;
/// 0.25 by common practice. The ratings are mostly recollection: use them to see gaps, not to rank kinds. It does not consider
/// when the stand was sown: a perennial feeds little before its second year.</remarks>
public sealed class SeasonCoverage : IWorkedResult
{
    private readonly ImmutableArray<KindShare> stand;

    private SeasonCoverage(ImmutableArray<KindShare> stand, double shareWanted)
    {
        this.stand = stand;
        ShareWanted = shareWanted;
        Seasons =
        [
            .. from season in Enum.GetValues<SeasonOfUse>()
            let feeding = stand.Where(k => SeasonWords.Feeds(k.Kind, season)).ToArray()
            select new SeasonShare
            {
                Season = season,
                Kinds = [.. feeding.Select(k => k.Kind).DistinctBy(k => k.Id)],
                Share = feeding.Sum(k => k.ShareOfFullStand),
                ShareWanted = shareWanted,
            },
        ];
    }

    /// <summary>Gets the seasons, in the order of the year from spring.</summary>
    public ImmutableArray<SeasonShare> Seasons { get; }

    /// <summary>Gets the share of a full stand that covers a season, a pure number.</summary>
    public double ShareWanted { get; }

    /// <summary>Gets the number of seasons covered.</summary>
    public int Covered => Seasons.Count(s => s.IsCovered);

    /// <summary>Gets the shares lacking over all seasons, a pure number.</summary>
    public double Lacking => Seasons.Sum(s => s.Lacking);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Seasons
                .Where(s => !s.IsCovered)
                .Select(Gap)
                .Concat(MemoryNotes.For("the seasons of use", stand.Select(k => (k.Kind, k.Kind.Seasons?.Evidence))))
        );

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds =>
        [.. stand.SelectMany(k => k.Kind.Seasons?.Evidence.SourceIds ?? []).Append("PRACTICE").Distinct()];

    /// <summary>Coverage of a stand.</summary>
    /// <param name="stand">Kinds with their shares of a full stand, sown and standing.</param>
    /// <param name="shareWanted">Share of a full stand that covers a season; above 0, at most 1; null takes the 0.25 of
    /// practice.</param>
    /// <returns>The coverage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share outside its range, NaN or infinite.</exception>
    public static SeasonCoverage Of(IEnumerable<KindShare> stand, double? shareWanted = null)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return new(
            [.. stand],
            Guard.AboveUpTo(shareWanted ?? BlendRules.SeasonShare, 0, 1, "of a full stand", nameof(shareWanted))
        );
    }

    /// <summary>Coverage of a blend, alone or on top of what stands already.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="standing">Kinds that stand on the plot already.</param>
    /// <returns>The coverage, with the 0.25 of practice.</returns>
    public static SeasonCoverage Of(Blend blend, params IEnumerable<KindShare> standing)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return Of(blend.KindShares.Concat(standing));
    }

    /// <summary>Says whether a season is covered.</summary>
    /// <param name="season">Season.</param>
    /// <returns>True when it is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown season.</exception>
    public bool Covers(SeasonOfUse season) => Seasons[(int)Guard.Defined(season)].IsCovered;

    /// <summary>What one added kind would improve, best first: most seasons newly covered, then most of what is lacking filled,
    /// then the name.</summary>
    /// <param name="candidates">Kinds to try; those without ratings are passed over.</param>
    /// <param name="share">Share of a full stand each would be added at; finite, above 0.</param>
    /// <returns>The kinds that improve anything.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share not above 0, NaN or infinite.</exception>
    public ImmutableArray<SeasonAddition> BestAdditions(IEnumerable<CropKind> candidates, double share)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        Guard.Above(share, 0, "of a full stand");
        return
        [
            .. candidates
                .Where(k => k.Seasons is not null)
                .Select(k => new SeasonAddition
                {
                    Added = KindShare.Of(k, share),
                    Before = this,
                    After = new SeasonCoverage(stand.Add(KindShare.Of(k, share)), ShareWanted),
                })
                .Where(a => a.Filled > 0)
                .OrderByDescending(a => a.SeasonsGained.Length)
                .ThenByDescending(a => a.Filled)
                .ThenBy(a => a.Added.Kind.Id, StringComparer.Ordinal),
        ];
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Seasons.Select(s => new WorkedLine(
                $"Share in {SeasonWords.InWords(s.Season)}",
                "sum of shares of a full stand of kinds rated high or medium",
                $"{(s.Kinds.IsEmpty ? "no kind" : string.Join(" + ", s.Kinds.Select(k => k.ShortName)))} = "
                    + $"{Amounts.Print(s.Share, 3)}, wanted {Amounts.Print(ShareWanted, 3)}: "
                    + $"{(s.IsCovered ? "covered" : "a gap")}",
                "PRACTICE"
            )),
        ];

    private static Finding Gap(SeasonShare season) =>
        FindingCatalog.Create(
            season.Kinds.IsEmpty ? "blend-season-bare" : "blend-season-thin",
            season.Kinds.IsEmpty
                ? [("season", SeasonWords.InWords(season.Season))]
                :
                [
                    ("season", SeasonWords.InWords(season.Season)),
                    ("kinds", string.Join("; ", season.Kinds.Select(k => k.ShortName))),
                    ("share", Amounts.Print(season.Share, 2)),
                    ("wanted", Amounts.Print(season.ShareWanted, 2)),
                ]
        );
}
